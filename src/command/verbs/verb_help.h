// SPDX-License-Identifier: GPL-3.0-or-later
// What `--help` prints, made from the verbs and their options.
#pragma once

#include "command/verbs/verb.h"

#include <string>

namespace piolo::command {

/// The help of a verb. Ends in a newline.
[[nodiscard]] std::string helpOf(const Verb& verb);
/// A line for each verb: "piolo click    writes …".
[[nodiscard]] std::string verbLines();
/// The lines of an option or more for each of them, in two columns.
[[nodiscard]] std::string optionLines(const OptionSpecs& options);
/// The table of the verbs in docs/command.md.
[[nodiscard]] std::string verbTable();

} // namespace piolo::command
