// SPDX-License-Identifier: GPL-3.0-or-later
// Which key does what, on every screen that has keys of its own.
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
    /// The most keys for one action.
    static constexpr int most = 4;

    explicit KeyTable(const Saved& saved = {});
    /// What differs from the default keys, and what this version does not know.
    [[nodiscard]] Saved changed() const;

    /// What the action does, in the current language.
    [[nodiscard]] static QString words(KeyAction action);
    [[nodiscard]] const QStringList& triggers(KeyAction action) const { return triggers_[rowOf(action)]; }
    /// The action that has that key in that scope.
    [[nodiscard]] std::optional<KeyAction> at(const QString& trigger, KeyScope scope) const;
    /// Another action that has that key in a scope of `action`.
    [[nodiscard]] std::optional<KeyAction> rival(KeyAction action, const QString& trigger) const;
    /// True if without it nothing would start a run, mark a miss or stop the click.
    [[nodiscard]] bool isNeeded(KeyAction action, const QString& trigger) const;
    [[nodiscard]] bool hasMidi() const;

    /// Adds the key before the others. Returns the key that it replaced, or "".
    QString add(KeyAction action, const QString& trigger);
    void remove(KeyAction action, const QString& trigger);
    void restore() { triggers_ = usual(); }
    /// Uses the keys of that set (see sets()); MIDI switches remain.
    void use(const QString& set);
    /// A list of {value, text}.
    [[nodiscard]] static QVariantList sets();
    /// One line for every action whose keys differ from those in `before`: "Take back the last mark: Left".
    [[nodiscard]] QStringList differences(const KeyTable& before) const;

private:
    using Triggers = std::array<QStringList, keyActions.size()>;
    [[nodiscard]] static Triggers usual();

    Triggers triggers_;
    Saved unknown_;
};

} // namespace piolo::models
