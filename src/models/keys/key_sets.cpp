// SPDX-License-Identifier: GPL-3.0-or-later
// Keys by what a pedal sends.
#include "models/keys/key_table.h"
#include "models/settings/setting_choices.h"

#include <algorithm>

namespace piolo::models {

namespace {

struct KeySet {
    const char* name;
    std::map<QString, QStringList> keys; // by action
};

const std::vector<KeySet>& keySets() {
    static const std::vector<KeySet> sets{
        {"pages", {}},
        {"leftRight", {{"mark", {"Space", "Right"}}, {"back", {"Backspace", "Left"}}}},
        {"upDown",
         {{"mark", {"Space", "Down"}},
          {"back", {"Backspace", "Up"}},
          {"faster", {"Shift+Up"}},
          {"slower", {"Shift+Down"}}}},
        {"spaceReturn", {{"mark", {"Space"}}, {"back", {"Backspace", "Return"}}, {"clean", {"C"}}}},
        {"one", {{"mark", {"Space"}}, {"pedal", {"PgDown"}}}},
    };
    return sets;
}

bool variesBySet(const QString& action) {
    return std::any_of(keySets().begin(), keySets().end(),
                       [&](const KeySet& set) { return set.keys.contains(action); });
}

/// The player's own keys stay where no set has anything to say, and MIDI switches everywhere.
QStringList underSet(const KeyAction& action, const std::map<QString, QStringList>& keys) {
    if (!variesBySet(action.name)) return action.triggers;
    const auto own = keys.find(action.name);
    QStringList triggers = own != keys.end() ? own->second : KeyTable().triggersOf(action.name);
    for (const QString& trigger : action.triggers)
        if (isMidi(trigger) && triggers.size() < KeyTable::most) triggers << trigger;
    return triggers;
}

} // namespace

QVariantList KeyTable::sets() {
    return {choice(QStringLiteral("pages"), qtTrId("keys.set.pages")),
            choice(QStringLiteral("leftRight"), qtTrId("keys.set.left-right")),
            choice(QStringLiteral("upDown"), qtTrId("keys.set.up-down")),
            choice(QStringLiteral("spaceReturn"), qtTrId("keys.set.space-return")),
            choice(QStringLiteral("one"), qtTrId("keys.set.one-pedal"))};
}

void KeyTable::use(const QString& name) {
    const auto set = std::find_if(keySets().begin(), keySets().end(),
                                  [&](const KeySet& one) { return name == QLatin1String(one.name); });
    if (set == keySets().end()) return;
    for (KeyAction& action : actions_) action.triggers = underSet(action, set->keys);
    // What the set took for itself does nothing else in the same place.
    for (int row = 0; row < count(); ++row)
        if (const KeyAction own = action(row); !variesBySet(own.name))
            for (const QString& trigger : own.triggers)
                if (rival(row, trigger) >= 0) remove(row, trigger);
}

} // namespace piolo::models
