// SPDX-License-Identifier: GPL-3.0-or-later
// The output of `--help`, generated from the verbs and their options.
#pragma once

#include "command/verbs/verb.h"

#include <string>

namespace piolo::command {

/// The help of a verb. Ends with a newline.
[[nodiscard]] std::string helpOf(const Verb& verb);
/// One line for each verb: "piolo click    writes …".
[[nodiscard]] std::string verbLines();
/// The lines for each of the options, in two columns.
[[nodiscard]] std::string optionLines(const OptionSpecs& options);
/// The table of verbs in docs/command.md.
[[nodiscard]] std::string verbTable();

} // namespace piolo::command
