// SPDX-License-Identifier: GPL-3.0-or-later
// The verbs of the command: each reads its words, does its work, and gives an exit code.
#pragma once

#include <span>
#include <string>

namespace piolo::app {

/// 0 done, 1 input or output at fault, 2 wrong use.
enum ExitCode : int { exitDone = 0, exitInput = 1, exitUse = 2 };

/// True when `word` is one of click, track, ladder, curve, sheet, bars, model, check, export, import.
[[nodiscard]] bool isVerb(const std::string& word);
/// Runs the verb with the words after it. Reads standard input and writes standard output and error.
int runVerb(const std::string& verb, std::span<const std::string> words);

} // namespace piolo::app
