// SPDX-License-Identifier: GPL-3.0-or-later
// The settings of the sound: the device, the click's voice and its layers. They belong to this machine.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "engine/click/mix.h"
#include "journal/settings/machine_settings.h"
#include "models/settings/mix_model.h"
#include "practice/ports/sound_port.h"

#include <cstdint>

namespace piolo::models {

/// Window thread. Values out of range are clamped, unknown choices ignored.
class SoundSettings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the settings")
    Q_PROPERTY(QVariantList devices READ devices NOTIFY devicesChanged)
    /// True while the settings are on the screen: devices and soundLine are updated every two seconds.
    Q_PROPERTY(bool watching READ watching WRITE setWatching NOTIFY watchingChanged)
    /// How often the sound dropped out; "" if it never did.
    Q_PROPERTY(QString soundLine READ soundLine NOTIFY soundLineChanged)
    /// "": the system's default device.
    Q_PROPERTY(QString device READ device WRITE setDevice NOTIFY machineChanged)
    Q_PROPERTY(int offsetMillis READ offsetMillis WRITE setOffsetMillis NOTIFY machineChanged)
    Q_PROPERTY(QVariantList voices READ voices CONSTANT)
    Q_PROPERTY(QString voice READ voice WRITE setVoice NOTIFY machineChanged)
    /// The overall level, 0…1, and its words.
    Q_PROPERTY(double volume READ volume WRITE setVolume NOTIFY mixChanged)
    Q_PROPERTY(QString volumeText READ volumeText NOTIFY mixChanged)
    Q_PROPERTY(piolo::models::MixModel* layers READ layers CONSTANT)
public:
    /// Both must outlive this object.
    SoundSettings(practice::SoundPort& sound, journal::MachineSettings& machine, QObject* parent = nullptr);

    [[nodiscard]] engine::Mix mix() const { return layers_.mix(); }
    [[nodiscard]] MixModel* layers() { return &layers_; }

    [[nodiscard]] QVariantList devices() const;
    [[nodiscard]] bool watching() const { return watching_.isActive(); }
    void setWatching(bool watching);
    [[nodiscard]] QString soundLine() const;
    /// Looks for devices that were plugged in or unplugged, and for new dropouts. The model's own timer calls
    /// it while watching.
    void lookAtSound();
    [[nodiscard]] QString device() const { return QString::fromStdString(machine_.soundDevice); }
    void setDevice(const QString& id);
    [[nodiscard]] int offsetMillis() const { return machine_.offsetMillis; }
    void setOffsetMillis(int millis);
    [[nodiscard]] QVariantList voices() const;
    [[nodiscard]] QString voice() const { return QString::fromStdString(machine_.voice); }
    void setVoice(const QString& voice);
    [[nodiscard]] double volume() const { return layers_.overall(); }
    void setVolume(double volume) { layers_.setLevel(0, volume); }
    [[nodiscard]] QString volumeText() const;

signals:
    void devicesChanged();
    void watchingChanged();
    void soundLineChanged();
    /// Something that is saved with the machine's settings has changed.
    void machineChanged();
    /// Voice, a level or a mute has changed: the engine needs mix() again.
    void mixChanged();
    /// The player changed how that sounds; `beat` stands for all clicks.
    void soundsOtherwise(piolo::engine::Layer layer);

private:
    practice::SoundPort& sound_;
    journal::MachineSettings& machine_;
    MixModel layers_;
    QTimer watching_;
    QVariantList seenDevices_; // at the last look
    std::uint64_t seenBreaks_ = 0;
};

} // namespace piolo::models
