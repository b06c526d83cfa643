// SPDX-License-Identifier: GPL-3.0-or-later
// The settings: practice settings, which are facts and travel with the folder, and those of this machine.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/passage/passage.h"
#include "engine/click/mix.h"
#include "journal/settings/machine_settings.h"
#include "models/settings/mix_model.h"
#include "practice/ports/sound_port.h"

#include <cstdint>
#include <string>

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window's thread. A practice setting is recorded when it changes; the machine's are saved a moment after
/// the last change, and when the model goes. Values out of range are clamped, unknown choices not taken.
class SettingsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    // This machine.
    Q_PROPERTY(QVariantList devices READ devices NOTIFY devicesChanged)
    /// The settings are on the screen: devices and soundLine are looked at every two seconds.
    Q_PROPERTY(bool watching READ watching WRITE setWatching NOTIFY watchingChanged)
    /// How often the sound has broken off.
    Q_PROPERTY(QString soundLine READ soundLine NOTIFY soundLineChanged)
    /// "": the system's own choice.
    Q_PROPERTY(QString device READ device WRITE setDevice NOTIFY machineChanged)
    Q_PROPERTY(int offsetMillis READ offsetMillis WRITE setOffsetMillis NOTIFY machineChanged)
    Q_PROPERTY(QVariantList voices READ voices CONSTANT)
    Q_PROPERTY(QString voice READ voice WRITE setVoice NOTIFY machineChanged)
    Q_PROPERTY(piolo::models::MixModel* layers READ layers CONSTANT)
    /// The one pedal: how long a hold is, and how soon the second of two presses comes. Any key: how soon a
    /// contact that closes again has bounced.
    Q_PROPERTY(int holdMillis READ holdMillis WRITE setHoldMillis NOTIFY machineChanged)
    Q_PROPERTY(int twiceMillis READ twiceMillis WRITE setTwiceMillis NOTIFY machineChanged)
    Q_PROPERTY(int bounceMillis READ bounceMillis WRITE setBounceMillis NOTIFY machineChanged)
    Q_PROPERTY(QVariantList themes READ themes CONSTANT)
    /// "system", "light" or "dark".
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY machineChanged)
    /// The theme in force is dark.
    Q_PROPERTY(bool dark READ dark NOTIFY machineChanged)
    Q_PROPERTY(QVariantList languages READ languages CONSTANT)
    /// "system", or a language's code: texts, numbers and dates of the window.
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
    Q_PROPERTY(bool welcomed READ welcomed WRITE setWelcomed NOTIFY machineChanged)
    /// Why the machine's settings could not be saved, "" when they were.
    Q_PROPERTY(QString fault READ fault NOTIFY faultChanged)
    // The practice folder.
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
    Q_PROPERTY(int gapMillis READ gapMillis WRITE setGapMillis NOTIFY practiceChanged)
    Q_PROPERTY(bool playOn READ playOn WRITE setPlayOn NOTIFY practiceChanged)
    Q_PROPERTY(int pauseAfterRuns READ pauseAfterRuns WRITE setPauseAfterRuns NOTIFY practiceChanged)
    Q_PROPERTY(int secureDays READ secureDays WRITE setSecureDays NOTIFY practiceChanged)
    /// From hearing a slip to pressing the key.
    Q_PROPERTY(int reactionMillis READ reactionMillis WRITE setReactionMillis NOTIFY practiceChanged)
    Q_PROPERTY(QVariantList dayOpenings READ dayOpenings CONSTANT)
    /// "twoRungsBelow", "asLeft" or "start".
    Q_PROPERTY(QString dayOpening READ dayOpening WRITE setDayOpening NOTIFY practiceChanged)
public:
    /// `machine` and `sound` outlive the model.
    SettingsModel(practice::PracticeBook& book, practice::SoundPort& sound, journal::MachineSettings& machine,
                  std::string configDir, QObject* parent = nullptr);
    ~SettingsModel() override;

    [[nodiscard]] engine::Mix mix() const { return layers_.mix(); }
    [[nodiscard]] MixModel* layers() { return &layers_; }

    [[nodiscard]] QVariantList devices() const;
    [[nodiscard]] bool watching() const { return watching_.isActive(); }
    void setWatching(bool watching);
    [[nodiscard]] QString soundLine() const;
    /// Looks for devices that came or went, and for new breaks. The model's own timer calls it while
    /// watching.
    void lookAtSound();
    [[nodiscard]] QString device() const { return QString::fromStdString(machine_.soundDevice); }
    void setDevice(const QString& id);
    [[nodiscard]] int offsetMillis() const { return machine_.offsetMillis; }
    void setOffsetMillis(int millis);
    [[nodiscard]] QVariantList voices() const;
    [[nodiscard]] QString voice() const { return QString::fromStdString(machine_.voice); }
    void setVoice(const QString& voice);
    [[nodiscard]] int holdMillis() const { return machine_.holdMillis; }
    void setHoldMillis(int millis);
    [[nodiscard]] int twiceMillis() const { return machine_.twiceMillis; }
    void setTwiceMillis(int millis);
    [[nodiscard]] int bounceMillis() const { return machine_.bounceMillis; }
    void setBounceMillis(int millis);
    [[nodiscard]] QVariantList themes() const;
    [[nodiscard]] QString theme() const { return QString::fromStdString(machine_.theme); }
    void setTheme(const QString& theme);
    [[nodiscard]] bool dark() const;
    [[nodiscard]] QVariantList languages() const;
    [[nodiscard]] QString language() const { return QString::fromStdString(machine_.language); }
    void setLanguage(const QString& language);
    [[nodiscard]] bool welcomed() const { return machine_.welcomed; }
    void setWelcomed(bool welcomed);
    [[nodiscard]] QString fault() const { return fault_; }
    /// The machine's settings to disk now, when they changed.
    void saveNow();

    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] int gapMillis() const;
    void setGapMillis(int millis);
    [[nodiscard]] bool playOn() const;
    void setPlayOn(bool on);
    [[nodiscard]] int pauseAfterRuns() const;
    void setPauseAfterRuns(int runs);
    [[nodiscard]] int secureDays() const;
    void setSecureDays(int days);
    [[nodiscard]] int reactionMillis() const;
    void setReactionMillis(int millis);
    [[nodiscard]] QVariantList dayOpenings() const;
    [[nodiscard]] QString dayOpening() const;
    void setDayOpening(const QString& opening);

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void devicesChanged();
    void watchingChanged();
    void soundLineChanged();
    void machineChanged();
    /// From here on texts are in another language: what was read, constant or not, is to be read again.
    void languageChanged();
    void practiceChanged();
    void faultChanged();
    /// Voice, a level or a mute: the engine wants mix() again.
    void mixChanged();
    /// A time of the pedal or of bounces.
    void pedalChanged();

private:
    template <typename Value>
    void put(Value PracticeSettings::*field, Value value);
    [[nodiscard]] const PracticeSettings& practice() const;
    void touched();
    void setPedal(int journal::MachineSettings::*field, int millis, journal::MillisRange range);

    practice::PracticeBook& book_;
    practice::SoundPort& sound_;
    journal::MachineSettings& machine_;
    std::string configDir_;
    MixModel layers_;
    QTimer saving_;
    QTimer watching_;
    QVariantList seenDevices_; // at the last look
    std::uint64_t seenBreaks_ = 0;
    QString fault_;
};

} // namespace piolo::models
