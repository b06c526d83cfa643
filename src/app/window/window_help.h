// SPDX-License-Identifier: GPL-3.0-or-later
// The output of `piolo --help`.
#pragma once

#include <string>

namespace piolo::app {

/// The verbs and the options of the window. Ends with a newline.
[[nodiscard]] std::string windowHelp();

} // namespace piolo::app
