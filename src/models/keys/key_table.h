// SPDX-License-Identifier: GPL-3.0-or-later
// Which key does what, in every screen that has keys of its own.
#pragma once

#include "models/keys/key_action.h"
#include "models/keys/key_trigger.h"

#include <QVariantList>

#include <array>
#include <map>
#include <optional>
#include <string>

namespace piolo::models {

/// Plain values.
class KeyTable {
public:
    using Saved = std::map<std::string, std::string>;
    /// As many as one action may have.
    static constexpr int most = 4;

    explicit KeyTable(const Saved& saved = {});
    /// What differs from the usual keys, and what this version does not know.
    [[nodiscard]] Saved changed() const;

    /// What the action does, in the language that is spoken now.
    [[nodiscard]] static QString words(KeyAction action);
    [[nodiscard]] const QStringList& triggers(KeyAction action) const { return triggers_[rowOf(action)]; }
    /// The action that has that key in that scope.
    [[nodiscard]] std::optional<KeyAction> at(const QString& trigger, KeyScope scope) const;
    /// Another action that has that key in a scope of `action`.
    [[nodiscard]] std::optional<KeyAction> rival(KeyAction action, const QString& trigger) const;
    /// Without it nothing would start a run, mark a miss, or stop the click.
    [[nodiscard]] bool isNeeded(KeyAction action, const QString& trigger) const;
    [[nodiscard]] bool hasMidi() const;

    /// In front of the others. Returns what had to give way, "" when nothing had.
    QString add(KeyAction action, const QString& trigger);
    void remove(KeyAction action, const QString& trigger);
    void restore() { triggers_ = usual(); }
    /// The keys of that set (see sets()); MIDI switches stay.
    void use(const QString& set);
    /// A list of {value, text}.
    [[nodiscard]] static QVariantList sets();
    /// Every action whose keys are not those of `before`, one line: "Take back the last mark: Left".
    [[nodiscard]] QStringList differences(const KeyTable& before) const;

private:
    using Triggers = std::array<QStringList, keyActions.size()>;
    [[nodiscard]] static Triggers usual();

    Triggers triggers_;
    Saved unknown_;
};

} // namespace piolo::models
