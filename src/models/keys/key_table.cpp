// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_table.h"

#include <algorithm>

namespace piolo::models {

namespace {

constexpr unsigned inDrill = static_cast<unsigned>(KeyPlace::drill);
constexpr unsigned inThrough = static_cast<unsigned>(KeyPlace::runThrough);
constexpr unsigned inLog = static_cast<unsigned>(KeyPlace::log);
constexpr unsigned inForm = static_cast<unsigned>(KeyPlace::form);

QString quoted(const char* text) { return QString::fromLatin1(text); }

} // namespace

std::vector<KeyAction> KeyTable::usual() {
    return {
        {quoted("mark"), qtTrId("keys.action.miss"), inDrill | inThrough, {"Space", "PgDown"}},
        {quoted("back"), qtTrId("keys.action.back"), inDrill | inThrough, {"Backspace", "PgUp"}},
        {quoted("stop"), qtTrId("keys.action.stop"), inDrill | inThrough, {"Esc"}},
        {quoted("pedal"), qtTrId("keys.action.pedal"), inDrill | inThrough, {}},
        {quoted("clean"), qtTrId("keys.action.clean"), inDrill | inThrough, {"Return"}},
        {quoted("faster"), qtTrId("keys.action.faster"), inDrill, {"Up"}},
        {quoted("slower"), qtTrId("keys.action.slower"), inDrill, {"Down"}},
        {quoted("try"), qtTrId("keys.action.try"), inDrill, {"T"}},
        {quoted("hear"), qtTrId("keys.action.hear"), inDrill, {"H"}},
        {quoted("next"), qtTrId("keys.action.next"), inDrill, {"N"}},
        {quoted("stretch"), qtTrId("keys.action.stretch"), inLog, {"N"}},
        {quoted("save"), qtTrId("keys.action.save"), inForm, {"Ctrl+Return"}},
    };
}

KeyTable::KeyTable(const Saved& saved) : actions_(usual()) {
    for (const auto& [name, text] : saved) {
        const int row = rowOf(QString::fromStdString(name));
        if (row < 0)
            unknown_[name] = text;
        else
            actions_[static_cast<std::size_t>(row)].triggers = triggersIn(text);
    }
}

void KeyTable::reword() {
    const auto fresh = usual();
    for (std::size_t row = 0; row < actions_.size(); ++row) actions_[row].words = fresh[row].words;
}

KeyTable::Saved KeyTable::changed() const {
    Saved changed = unknown_;
    const auto untouched = usual();
    for (std::size_t row = 0; row < actions_.size(); ++row)
        if (actions_[row].triggers != untouched[row].triggers)
            changed[actions_[row].name.toStdString()] = textOf(actions_[row].triggers);
    return changed;
}

int KeyTable::rowOf(const QString& name) const {
    const auto found = std::find_if(actions_.begin(), actions_.end(),
                                    [&](const KeyAction& action) { return action.name == name; });
    return found == actions_.end() ? -1 : static_cast<int>(found - actions_.begin());
}

QStringList KeyTable::triggersOf(const QString& name) const {
    const int row = rowOf(name);
    return row < 0 ? QStringList() : action(row).triggers;
}

int KeyTable::at(const QString& trigger, KeyPlace place) const {
    for (int row = 0; row < count(); ++row)
        if ((action(row).places & static_cast<unsigned>(place)) != 0 &&
            action(row).triggers.contains(trigger))
            return row;
    return -1;
}

int KeyTable::rival(int row, const QString& trigger) const {
    for (int other = 0; other < count(); ++other)
        if (other != row && (action(other).places & action(row).places) != 0 &&
            action(other).triggers.contains(trigger))
            return other;
    return -1;
}

// One pedal for all starts, marks and stops.
bool KeyTable::isNeeded(int row, const QString& trigger) const {
    const QString& name = action(row).name;
    const auto rest = [&](const char* which) {
        QStringList left = triggersOf(quoted(which));
        if (name == QLatin1String(which)) left.removeAll(trigger);
        return !left.isEmpty();
    };
    const bool vital =
        name == QLatin1String("mark") || name == QLatin1String("stop") || name == QLatin1String("pedal");
    return vital && !rest("pedal") && !(rest("mark") && rest("stop"));
}

bool KeyTable::hasMidi() const {
    return std::any_of(actions_.begin(), actions_.end(), [](const KeyAction& action) {
        return std::any_of(action.triggers.begin(), action.triggers.end(), isMidi);
    });
}

QString KeyTable::add(int row, const QString& trigger) {
    if (row < 0 || row >= count()) return {};
    QStringList& triggers = actions_[static_cast<std::size_t>(row)].triggers;
    triggers.removeAll(trigger);
    triggers.prepend(trigger);
    return triggers.size() > most ? triggers.takeLast() : QString();
}

void KeyTable::remove(int row, const QString& trigger) {
    if (row >= 0 && row < count()) actions_[static_cast<std::size_t>(row)].triggers.removeAll(trigger);
}

void KeyTable::restore() { actions_ = usual(); }

QStringList KeyTable::differences(const KeyTable& before) const {
    QStringList lines;
    for (int row = 0; row < count(); ++row) {
        const QStringList& now = action(row).triggers;
        if (now == before.action(row).triggers) continue;
        lines << qtTrId("keys.action-keys")
                     .arg(action(row).words, now.isEmpty() ? qtTrId("keys.none") : triggerWords(now));
    }
    return lines;
}

} // namespace piolo::models
