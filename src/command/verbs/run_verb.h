// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a verb as the command line asks for it.
#pragma once

#include <span>
#include <string>

namespace piolo::command {

/// The first of the `words` is the verb. Main thread; reads standard input and writes standard output and
/// error. Returns the exit code of the program.
int runVerb(std::span<const std::string> words);

} // namespace piolo::command
