// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/practice_settings_model.h"

#include "models/settings/setting_choices.h"
#include "practice/log/practice_book.h"

#include <algorithm>

namespace piolo::models {

PracticeSettingsModel::PracticeSettingsModel(practice::PracticeBook& book, QObject* parent)
    : QObject(parent), book_(book) {
    connect(&book_, &practice::PracticeBook::changed, this, [this](const QString& passage) {
        if (passage.isEmpty()) emit changed();
    });
}

bool PracticeSettingsModel::readOnly() const { return book_.readOnly(); }

const PracticeSettings& PracticeSettingsModel::settings() const { return book_.notebook().settings(); }

template <typename Value>
void PracticeSettingsModel::put(Value PracticeSettings::*field, Value value) {
    PracticeSettings wanted = settings();
    if (wanted.*field == value || readOnly()) return;
    wanted.*field = value;
    book_.record(SettingsFact{wanted});
}

int PracticeSettingsModel::gapMillis() const { return settings().gapMillisAfterMiss; }
void PracticeSettingsModel::setGapMillis(int millis) {
    put(&PracticeSettings::gapMillisAfterMiss, std::clamp(millis, 0, 30'000));
}
bool PracticeSettingsModel::playOn() const { return settings().playOn; }
void PracticeSettingsModel::setPlayOn(bool on) { put(&PracticeSettings::playOn, on); }
int PracticeSettingsModel::pauseAfterRuns() const { return settings().pauseAfterRuns; }
void PracticeSettingsModel::setPauseAfterRuns(int runs) {
    put(&PracticeSettings::pauseAfterRuns, std::clamp(runs, 0, 999));
}
int PracticeSettingsModel::secureDays() const { return settings().secureDays; }
void PracticeSettingsModel::setSecureDays(int days) {
    put(&PracticeSettings::secureDays, std::clamp(days, 1, 999));
}

int PracticeSettingsModel::reactionMillis() const { return settings().reactionMillis; }
void PracticeSettingsModel::setReactionMillis(int millis) {
    put(&PracticeSettings::reactionMillis, std::clamp(millis, 0, PracticeSettings::mostReactionMillis));
}

QVariantList PracticeSettingsModel::dayOpenings() const { return dayOpeningChoices(); }
QString PracticeSettingsModel::dayOpening() const { return nameOfOpening(settings().dayOpening); }
void PracticeSettingsModel::setDayOpening(const QString& opening) {
    if (const auto named = openingNamed(opening)) put(&PracticeSettings::dayOpening, *named);
}

} // namespace piolo::models
