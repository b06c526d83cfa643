// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of keys by what a pedal sends.
#include "models/keys/key_table.h"
#include "models/settings/setting_choices.h"

#include <algorithm>

namespace piolo::models {

namespace {

using ActionKeys = std::map<KeyAction, QStringList>;

struct KeySet {
    const char* name;
    const char* text;
    ActionKeys keys;
};

const std::vector<KeySet>& keySets() {
    using enum KeyAction;
    static const std::vector<KeySet> sets{
        {"pages", QT_TRID_NOOP("keys.set.pages"), {}},
        {"leftRight",
         QT_TRID_NOOP("keys.set.left-right"),
         {{mark, {"Space", "Right"}}, {back, {"Backspace", "Left"}}, {tap, {"T", "Left"}}}},
        {"upDown",
         QT_TRID_NOOP("keys.set.up-down"),
         {{mark, {"Space", "Down"}},
          {back, {"Backspace", "Up"}},
          {tap, {"T", "Up"}},
          {faster, {"Shift+Up"}},
          {slower, {"Shift+Down"}}}},
        {"spaceReturn",
         QT_TRID_NOOP("keys.set.space-return"),
         {{mark, {"Space"}}, {back, {"Backspace", "Return"}}, {tap, {"T", "Return"}}, {clean, {"C"}}}},
        {"one", QT_TRID_NOOP("keys.set.one-pedal"), {{mark, {"Space"}}, {pedal, {"PgDown"}}}},
    };
    return sets;
}

bool variesBySet(KeyAction action) {
    return std::ranges::any_of(keySets(), [&](const KeySet& set) { return set.keys.contains(action); });
}

/// The player's own keys remain where the set defines nothing; MIDI switches always remain.
QStringList underSet(KeyAction action, const QStringList& present, const ActionKeys& keys) {
    if (!variesBySet(action)) return present;
    const auto own = keys.find(action);
    QStringList triggers = own != keys.end() ? own->second : KeyTable().triggers(action);
    for (const QString& trigger : present)
        if (isMidi(trigger) && triggers.size() < KeyTable::most) triggers << trigger;
    return triggers;
}

} // namespace

QVariantList KeyTable::sets() {
    QVariantList list;
    for (const KeySet& set : keySets()) list << choice(QString::fromLatin1(set.name), qtTrId(set.text));
    return list;
}

void KeyTable::use(const QString& name) {
    const auto set =
        std::ranges::find_if(keySets(), [&](const KeySet& one) { return name == QLatin1String(one.name); });
    if (set == keySets().end()) return;
    for (const KeyActionInfo& info : keyActions) {
        QStringList& triggers = triggers_[rowOf(info.action)];
        triggers = underSet(info.action, triggers, set->keys);
    }
    // Keys used by the set are removed from other actions in the same scope.
    for (const KeyActionInfo& info : keyActions) {
        if (variesBySet(info.action)) continue;
        const QStringList own = triggers(info.action);
        for (const QString& trigger : own)
            if (rival(info.action, trigger)) remove(info.action, trigger);
    }
}

} // namespace piolo::models
