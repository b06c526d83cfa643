// SPDX-License-Identifier: GPL-3.0-or-later
// Which key does what, in every screen that has keys of its own.
#pragma once

#include "models/keys/key_trigger.h"

#include <QCoreApplication>
#include <QVariantList>

#include <map>
#include <string>
#include <vector>

namespace piolo::models {

/// Where an action can be done. A key can do one thing in each place.
enum class KeyPlace : unsigned { none = 0, drill = 1, runThrough = 2, log = 4, form = 8 };

struct KeyAction {
    QString name;
    QString words;
    unsigned places = 0; ///< of KeyPlace, added up
    QStringList triggers;
};

/// Plain values. Rows are counted from 0; a row that is none does nothing.
class KeyTable {
public:
    using Saved = std::map<std::string, std::string>;
    /// As many as one action may have.
    static constexpr int most = 4;

    explicit KeyTable(const Saved& saved = {});
    /// What differs from the usual keys, and what this version does not know.
    [[nodiscard]] Saved changed() const;

    [[nodiscard]] int count() const { return static_cast<int>(actions_.size()); }
    [[nodiscard]] const KeyAction& action(int row) const { return actions_[static_cast<std::size_t>(row)]; }
    /// -1 when there is none of that name.
    [[nodiscard]] int rowOf(const QString& name) const;
    [[nodiscard]] QStringList triggersOf(const QString& name) const;
    /// The row that has that key in that place, or -1.
    [[nodiscard]] int at(const QString& trigger, KeyPlace place) const;
    /// The row of another action that has that key in a place of `row`, or -1.
    [[nodiscard]] int rival(int row, const QString& trigger) const;
    /// Without it nothing would start a run, mark a miss, or stop the click.
    [[nodiscard]] bool isNeeded(int row, const QString& trigger) const;
    [[nodiscard]] bool hasMidi() const;

    /// In front of the others. Returns what had to give way, "" when nothing had.
    QString add(int row, const QString& trigger);
    void remove(int row, const QString& trigger);
    void restore();
    /// The words of the actions again, in the language that is spoken now.
    void reword();
    /// The keys of that set (see sets()); MIDI switches stay.
    void use(const QString& set);
    /// A list of {value, text}.
    [[nodiscard]] static QVariantList sets();
    /// Every action whose keys are not those of `before`, one line: "Take back the last mark: Left".
    [[nodiscard]] QStringList differences(const KeyTable& before) const;

private:
    [[nodiscard]] static std::vector<KeyAction> usual();

    std::vector<KeyAction> actions_;
    Saved unknown_;
};

} // namespace piolo::models
