// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a verb from the command line.
#pragma once

#include <span>
#include <string>

namespace piolo::command {

/// The first of the `words` is the verb. Main thread; reads standard input and writes standard output and
/// error. Returns the program's exit status.
int runVerb(std::span<const std::string> words);

} // namespace piolo::command
