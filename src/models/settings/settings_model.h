// SPDX-License-Identifier: GPL-3.0-or-later
// The settings: practice settings, which are facts and travel with the folder, and those of this machine.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "journal/settings/machine_settings.h"
#include "models/settings/practice_settings_model.h"
#include "models/settings/settings_saving.h"
#include "models/settings/sound_settings.h"

#include <string>

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window's thread. A practice setting is recorded when it changes; the machine's are saved a moment after
/// the last change, on a thread of their own, and when the model goes. Values out of range are clamped,
/// unknown choices not taken.
class SettingsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    Q_PROPERTY(piolo::models::SoundSettings* sound READ sound CONSTANT)
    /// The settings of the practice folder; all others are this machine's.
    Q_PROPERTY(piolo::models::PracticeSettingsModel* practice READ practice CONSTANT)
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
public:
    /// `machine` and `sound` outlive the model.
    SettingsModel(practice::PracticeBook& book, practice::SoundPort& sound, journal::MachineSettings& machine,
                  std::string configDir, QObject* parent = nullptr);
    ~SettingsModel() override;

    [[nodiscard]] SoundSettings* sound() { return &sound_; }
    [[nodiscard]] PracticeSettingsModel* practice() { return &practice_; }

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
    /// Why the settings that were read are not those that were saved; shown until they are saved again.
    void tell(const Fault& damaged);
    /// The machine's settings to disk now; waits for it, but not for long.
    void saveNow();

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void machineChanged();
    /// From here on texts are in another language: what was read, constant or not, is to be read again.
    void languageChanged();
    void faultChanged();
    /// A time of the pedal or of bounces.
    void pedalChanged();

private:
    void touched();
    void hear(const Done& saved);
    void setPedal(int journal::MachineSettings::*field, int millis, journal::MillisRange range);

    journal::MachineSettings& machine_;
    SoundSettings sound_;
    PracticeSettingsModel practice_;
    QTimer saving_;
    QString fault_;
    SettingsSaving disk_; // last: it tells this object
};

} // namespace piolo::models
