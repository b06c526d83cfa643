// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_capture.h"

namespace piolo::models {

void KeyCapture::begin(KeyAction action) {
    giveUp();
    action_ = action;
}

void KeyCapture::giveUp() {
    action_.reset();
    conflict_.clear();
    contested_.clear();
}

QStringList KeyCapture::offer(const QString& trigger) {
    if (!action_) return {};
    const auto rival = table_.rival(*action_, trigger);
    if (rival && trigger != contested_) {
        contest(*rival, trigger);
        return {};
    }
    contested_ = trigger;
    return takeOver();
}

void KeyCapture::contest(KeyAction rival, const QString& trigger) {
    const QString key = triggerWords(trigger);
    const QString holder = KeyTable::words(rival);
    const bool needed = table_.isNeeded(rival, trigger);
    contested_ = needed ? QString() : trigger;
    conflict_ = needed ? qtTrId("keys.last").arg(key, holder) : qtTrId("keys.taken").arg(key, holder);
}

QStringList KeyCapture::takeOver() {
    if (!action_ || contested_.isEmpty()) return {};
    const QString key = triggerWords(contested_);
    QStringList lines{qtTrId("keys.moved-to").arg(key, KeyTable::words(*action_))};
    while (const auto rival = table_.rival(*action_, contested_)) {
        lines << qtTrId("keys.moved-from").arg(key, KeyTable::words(*rival));
        table_.remove(*rival, contested_);
    }
    const QString gone = table_.add(*action_, contested_);
    if (!gone.isEmpty()) lines << qtTrId("keys.full").arg(triggerWords(gone)).arg(KeyTable::most);
    giveUp();
    return lines;
}

} // namespace piolo::models
