// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/settings_model.h"

#include "models/settings/language.h"
#include "models/settings/setting_choices.h"
#include "practice/faults/fault_text.h"

#include <QEvent>
#include <QGuiApplication>
#include <QMetaObject>
#include <QPalette>

#include <algorithm>
#include <utility>

namespace piolo::models {

SettingsModel::SettingsModel(practice::PracticeBook& book, practice::SoundPort& sound,
                             journal::MachineSettings& machine, std::string configDir, QObject* parent)
    : QObject(parent), machine_(machine), sound_(sound, machine), practice_(book),
      disk_(std::move(configDir), [this](const Done& saved) {
          QMetaObject::invokeMethod(
              this, [this, saved] { hear(saved); }, Qt::QueuedConnection);
      }) {
    saving_.setSingleShot(true);
    saving_.setInterval(200); // so that a moving slider saves only once
    connect(&saving_, &QTimer::timeout, this, [this] { disk_.save(machine_); });
    connect(&sound_, &SoundSettings::machineChanged, this, &SettingsModel::touched);
    QCoreApplication::instance()->installEventFilter(this);
}

SettingsModel::~SettingsModel() {
    if (saving_.isActive()) saveNow();
}

void SettingsModel::touched() {
    saving_.start();
    emit machineChanged();
}

void SettingsModel::tell(const Fault& damaged) {
    fault_ = qtTrId("settings.damaged").arg(practice::faultLine(damaged));
    emit faultChanged();
}

void SettingsModel::saveNow() {
    saving_.stop();
    disk_.save(machine_);
    disk_.flush(SettingsSaving::farewellMillis);
}

void SettingsModel::hear(const Done& saved) {
    const QString fault = saved ? QString() : practice::faultLine(saved.fault());
    if (fault == fault_) return;
    fault_ = fault;
    emit faultChanged();
}

void SettingsModel::setPedal(int journal::MachineSettings::*field, int millis, journal::MillisRange range) {
    const int clamped = std::clamp(millis, range.least, range.most);
    if (clamped == machine_.*field) return;
    machine_.*field = clamped;
    touched();
    emit pedalChanged();
}

void SettingsModel::setHoldMillis(int millis) {
    setPedal(&journal::MachineSettings::holdMillis, millis, journal::MachineSettings::holdRange);
}
void SettingsModel::setTwiceMillis(int millis) {
    setPedal(&journal::MachineSettings::twiceMillis, millis, journal::MachineSettings::twiceRange);
}
void SettingsModel::setBounceMillis(int millis) {
    setPedal(&journal::MachineSettings::bounceMillis, millis, journal::MachineSettings::bounceRange);
}

QVariantList SettingsModel::themes() const { return themeChoices(); }

void SettingsModel::setTheme(const QString& theme) {
    if (theme == this->theme() || !hasChoice(themes(), theme)) return;
    machine_.theme = theme.toStdString();
    touched();
}

QVariantList SettingsModel::languages() const { return languageChoices(); }

void SettingsModel::setLanguage(const QString& language) {
    if (language == this->language() || !hasChoice(languages(), language)) return;
    machine_.language = language.toStdString();
    touched();
    speak(language);
    emit languageChanged();
}

bool SettingsModel::dark() const {
    if (machine_.theme != "system") return machine_.theme == "dark";
    return QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
}

bool SettingsModel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ApplicationPaletteChange && machine_.theme == "system")
        emit machineChanged();
    return QObject::eventFilter(watched, event);
}

void SettingsModel::setWelcomed(bool welcomed) {
    if (welcomed == machine_.welcomed) return;
    machine_.welcomed = welcomed;
    touched();
}

} // namespace piolo::models
