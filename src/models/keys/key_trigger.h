// SPDX-License-Identifier: GPL-3.0-or-later
// What can be bound: a key of the keyboard (most pedals are one) or a MIDI switch, each as a text.
#pragma once

#include <QKeyEvent>
#include <QString>
#include <QStringList>

#include <string>

namespace piolo::models {

/// The key with its modifiers in portable text, "PgDown", "Ctrl+Return"; "" for one that cannot be bound: a
/// modifier alone, and Tab, which goes from control to control. The number pad's keys are those of the same
/// name.
[[nodiscard]] QString triggerOf(const QKeyEvent& event);
[[nodiscard]] bool isMidi(const QString& trigger);
/// As people read it; a text that this version does not know stays as it is.
[[nodiscard]] QString triggerWords(const QString& trigger);
[[nodiscard]] QString triggerWords(const QStringList& triggers);

/// All that a saved text holds, what is not known too; each once.
[[nodiscard]] QStringList triggersIn(const std::string& text);
[[nodiscard]] std::string textOf(const QStringList& triggers);

} // namespace piolo::models
