// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_table.h"

#include <algorithm>

namespace piolo::models {

KeyTable::Triggers KeyTable::usual() {
    Triggers triggers;
    for (const KeyActionInfo& info : keyActions)
        for (const char* const key : info.usual)
            if (key != nullptr) triggers[rowOf(info.action)] << QString::fromLatin1(key);
    return triggers;
}

KeyTable::KeyTable(const Saved& saved) : triggers_(usual()) {
    for (const auto& [name, text] : saved) {
        if (const auto action = keyActionNamed(name))
            triggers_[rowOf(*action)] = triggersIn(text);
        else
            unknown_[name] = text;
    }
}

KeyTable::Saved KeyTable::changed() const {
    Saved changed = unknown_;
    const Triggers untouched = usual();
    for (const KeyActionInfo& info : keyActions)
        if (triggers(info.action) != untouched[rowOf(info.action)])
            changed[std::string(info.name)] = textOf(triggers(info.action));
    return changed;
}

QString KeyTable::words(KeyAction action) { return qtTrId(infoOf(action).text); }

std::optional<KeyAction> KeyTable::at(const QString& trigger, KeyScope scope) const {
    for (const KeyActionInfo& info : keyActions)
        if (overlap(info.scopes, scope) && triggers(info.action).contains(trigger)) return info.action;
    return std::nullopt;
}

std::optional<KeyAction> KeyTable::rival(KeyAction action, const QString& trigger) const {
    for (const KeyActionInfo& other : keyActions)
        if (other.action != action && overlap(other.scopes, infoOf(action).scopes) &&
            triggers(other.action).contains(trigger))
            return other.action;
    return std::nullopt;
}

// A single pedal starts, marks and stops.
bool KeyTable::isNeeded(KeyAction action, const QString& trigger) const {
    const auto rest = [&](KeyAction which) {
        QStringList left = triggers(which);
        if (action == which) left.removeAll(trigger);
        return !left.isEmpty();
    };
    const bool vital = action == KeyAction::mark || action == KeyAction::stop || action == KeyAction::pedal;
    return vital && !rest(KeyAction::pedal) && !(rest(KeyAction::mark) && rest(KeyAction::stop));
}

bool KeyTable::hasMidi() const {
    return std::ranges::any_of(triggers_, [](const QStringList& triggers) {
        return std::any_of(triggers.begin(), triggers.end(), isMidi);
    });
}

QString KeyTable::add(KeyAction action, const QString& trigger) {
    QStringList& triggers = triggers_[rowOf(action)];
    triggers.removeAll(trigger);
    triggers.prepend(trigger);
    return triggers.size() > most ? triggers.takeLast() : QString();
}

void KeyTable::remove(KeyAction action, const QString& trigger) {
    triggers_[rowOf(action)].removeAll(trigger);
}

QStringList KeyTable::differences(const KeyTable& before) const {
    QStringList lines;
    for (const KeyActionInfo& info : keyActions) {
        const QStringList& now = triggers(info.action);
        if (now == before.triggers(info.action)) continue;
        lines << qtTrId("keys.action-keys")
                     .arg(words(info.action), now.isEmpty() ? qtTrId("keys.none") : triggerWords(now));
    }
    return lines;
}

} // namespace piolo::models
