// SPDX-License-Identifier: GPL-3.0-or-later
// What `piolo --help` prints.
#pragma once

#include <string>

namespace piolo::app {

/// The verbs, and the options of the window. Ends in a newline.
[[nodiscard]] std::string windowHelp();

} // namespace piolo::app
