// SPDX-License-Identifier: GPL-3.0-or-later
// A key that is being chosen for an action: who waits for it, and who has it already.
#pragma once

#include "models/keys/key_table.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace piolo::models {

/// Window's thread.
class KeyCapture {
public:
    /// `table` outlives this.
    explicit KeyCapture(KeyTable& table) : table_(table) {}

    /// The action that waits for its key.
    [[nodiscard]] std::optional<KeyAction> action() const { return action_; }
    /// Why the last key was not taken; "" when it was.
    [[nodiscard]] const QString& conflict() const { return conflict_; }
    /// Another action has that key, and can do without it.
    [[nodiscard]] bool isContested() const { return !contested_.isEmpty(); }

    void begin(KeyAction action);
    void giveUp();
    /// Binds the key, or contests it when another action has it; offered again, it is taken over. Returns
    /// what changed in the table, line by line; nothing when nothing did.
    QStringList offer(const QString& trigger);
    /// The contested key leaves the action that has it. Returns what changed, as above.
    QStringList takeOver();

private:
    void contest(KeyAction rival, const QString& trigger);

    KeyTable& table_;
    std::optional<KeyAction> action_;
    QString conflict_;
    QString contested_;
};

} // namespace piolo::models
