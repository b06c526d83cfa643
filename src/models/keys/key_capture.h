// SPDX-License-Identifier: GPL-3.0-or-later
// A key being chosen for an action: which action waits for it, and which one already has it.
#pragma once

#include "models/keys/key_table.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace piolo::models {

/// Window thread.
class KeyCapture {
public:
    /// `table` must outlive this object.
    explicit KeyCapture(KeyTable& table) : table_(table) {}

    /// The action that is waiting for its key.
    [[nodiscard]] std::optional<KeyAction> action() const { return action_; }
    /// Why the last key was not accepted; "" if it was.
    [[nodiscard]] const QString& conflict() const { return conflict_; }
    /// True if another action has that key and does not need it.
    [[nodiscard]] bool isContested() const { return !contested_.isEmpty(); }

    void begin(KeyAction action);
    void giveUp();
    /// Binds the key, or contests it if another action has it; if it is offered again, it is taken over.
    /// Returns the changes to the table line by line; empty if there are none.
    QStringList offer(const QString& trigger);
    /// Removes the contested key from the other action. Returns the changes, as above.
    QStringList takeOver();

private:
    void contest(KeyAction rival, const QString& trigger);

    KeyTable& table_;
    std::optional<KeyAction> action_;
    QString conflict_;
    QString contested_;
};

} // namespace piolo::models
