// SPDX-License-Identifier: GPL-3.0-or-later
// What `--help` prints.
#pragma once

#include <string>
#include <string_view>

namespace piolo::app {

/// The help of a verb, or of the program when `verb` is "". Ends in a newline.
[[nodiscard]] std::string helpOf(std::string_view verb);

} // namespace piolo::app
