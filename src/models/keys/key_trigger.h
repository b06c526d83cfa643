// SPDX-License-Identifier: GPL-3.0-or-later
// What can be bound, as text: a key of the keyboard (most pedals act as one) or a MIDI switch.
#pragma once

#include <QKeyEvent>
#include <QString>
#include <QStringList>

#include <string>

namespace piolo::models {

/// The key with its modifiers as portable text, "PgDown", "Ctrl+Return"; "" if it cannot be bound: a modifier
/// alone, and Tab, which moves the focus. Keys of the number pad have the names of their counterparts.
[[nodiscard]] QString triggerOf(const QKeyEvent& event);
[[nodiscard]] bool isMidi(const QString& trigger);
/// For display; text that this version does not know stays as it is.
[[nodiscard]] QString triggerWords(const QString& trigger);
[[nodiscard]] QString triggerWords(const QStringList& triggers);

/// All triggers in a saved text, even unknown ones; each once.
[[nodiscard]] QStringList triggersIn(const std::string& text);
[[nodiscard]] std::string textOf(const QStringList& triggers);

} // namespace piolo::models
