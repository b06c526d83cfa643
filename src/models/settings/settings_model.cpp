// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/settings_model.h"

#include "models/settings/language.h"
#include "models/settings/setting_choices.h"
#include "practice/faults/fault_text.h"
#include "practice/log/practice_book.h"

#include <QEvent>
#include <QGuiApplication>
#include <QPalette>

#include <algorithm>
#include <utility>

namespace piolo::models {

namespace {

constexpr int firstLookMillis = 200; // the answer to the question that showing the list put
constexpr int lookEveryMillis = 2'000;

} // namespace

SettingsModel::SettingsModel(practice::PracticeBook& book, practice::SoundPort& sound,
                             journal::MachineSettings& machine, std::string configDir, QObject* parent)
    : QObject(parent), book_(book), sound_(sound), machine_(machine), configDir_(std::move(configDir)),
      layers_(machine) {
    saving_.setSingleShot(true);
    saving_.setInterval(200); // a slider in motion writes once
    connect(&saving_, &QTimer::timeout, this, &SettingsModel::saveNow);
    connect(&watching_, &QTimer::timeout, this, &SettingsModel::lookAtSound);
    connect(&layers_, &MixModel::changed, this, [this] {
        touched();
        emit mixChanged();
    });
    connect(&book_, &practice::PracticeBook::changed, this, [this](const QString& passage) {
        if (passage.isEmpty()) emit practiceChanged();
    });
    QCoreApplication::instance()->installEventFilter(this);
}

SettingsModel::~SettingsModel() {
    if (saving_.isActive()) saveNow();
}

bool SettingsModel::readOnly() const { return book_.readOnly(); }

void SettingsModel::touched() {
    saving_.start();
    emit machineChanged();
}

void SettingsModel::saveNow() {
    saving_.stop();
    const auto saved = journal::saveMachineSettings(configDir_, machine_);
    const QString fault = saved ? QString() : practice::faultLine(saved.fault());
    if (fault == fault_) return;
    fault_ = fault;
    emit faultChanged();
}

QVariantList SettingsModel::devices() const {
    QVariantList list{choice(QString(), qtTrId("sound.output.system"))};
    for (const practice::SoundOutput& output : sound_.outputs())
        list << choice(QString::fromStdString(output.id), QString::fromStdString(output.name));
    // A chosen device that is not plugged in stays chosen.
    if (!hasChoice(list, device())) list << choice(device(), qtTrId("sound.output.unplugged").arg(device()));
    return list;
}

void SettingsModel::setWatching(bool watching) {
    if (watching == watching_.isActive()) return;
    if (watching)
        watching_.start(firstLookMillis);
    else
        watching_.stop();
    emit watchingChanged();
}

// The system does not tell of a device that is plugged in.
void SettingsModel::lookAtSound() {
    watching_.setInterval(lookEveryMillis);
    if (const QVariantList now = devices(); now != seenDevices_) {
        seenDevices_ = now;
        emit devicesChanged();
    }
    const std::uint64_t breaks = sound_.state().underruns;
    if (breaks == seenBreaks_) return;
    seenBreaks_ = breaks;
    emit soundLineChanged();
}

QString SettingsModel::soundLine() const {
    const std::uint64_t breaks = sound_.state().underruns;
    if (breaks == 0) return qtTrId("sound.dropouts.none");
    const QString times =
        breaks == 1 ? qtTrId("sound.dropouts.once") : qtTrId("sound.dropouts.times").arg(breaks);
    return qtTrId("sound.dropouts").arg(times);
}

void SettingsModel::setDevice(const QString& id) {
    if (id == device()) return;
    machine_.soundDevice = id.toStdString();
    sound_.choose(machine_.soundDevice);
    touched();
}

void SettingsModel::setOffsetMillis(int millis) {
    constexpr auto range = journal::MachineSettings::offsetRange;
    const int clamped = std::clamp(millis, range.least, range.most);
    if (clamped == machine_.offsetMillis) return;
    machine_.offsetMillis = clamped;
    sound_.setOffsetMillis(clamped);
    touched();
}

QVariantList SettingsModel::voices() const { return voiceChoices(); }

void SettingsModel::setVoice(const QString& voice) {
    if (voice == this->voice() || !hasChoice(voices(), voice)) return;
    machine_.voice = voice.toStdString();
    touched();
    emit mixChanged();
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

const PracticeSettings& SettingsModel::practice() const { return book_.notebook().settings(); }

template <typename Value>
void SettingsModel::put(Value PracticeSettings::*field, Value value) {
    PracticeSettings wanted = practice();
    if (wanted.*field == value || readOnly()) return;
    wanted.*field = value;
    book_.record(SettingsFact{wanted});
}

int SettingsModel::gapMillis() const { return practice().gapMillisAfterMiss; }
void SettingsModel::setGapMillis(int millis) {
    put(&PracticeSettings::gapMillisAfterMiss, std::clamp(millis, 0, 30'000));
}
bool SettingsModel::playOn() const { return practice().playOn; }
void SettingsModel::setPlayOn(bool on) { put(&PracticeSettings::playOn, on); }
int SettingsModel::pauseAfterRuns() const { return practice().pauseAfterRuns; }
void SettingsModel::setPauseAfterRuns(int runs) {
    put(&PracticeSettings::pauseAfterRuns, std::clamp(runs, 0, 999));
}
int SettingsModel::secureDays() const { return practice().secureDays; }
void SettingsModel::setSecureDays(int days) { put(&PracticeSettings::secureDays, std::clamp(days, 1, 999)); }

int SettingsModel::reactionMillis() const { return practice().reactionMillis; }
void SettingsModel::setReactionMillis(int millis) {
    put(&PracticeSettings::reactionMillis, std::clamp(millis, 0, PracticeSettings::mostReactionMillis));
}

QVariantList SettingsModel::dayOpenings() const { return dayOpeningChoices(); }
QString SettingsModel::dayOpening() const { return nameOfOpening(practice().dayOpening); }
void SettingsModel::setDayOpening(const QString& opening) {
    if (const auto named = openingNamed(opening)) put(&PracticeSettings::dayOpening, *named);
}

} // namespace piolo::models
