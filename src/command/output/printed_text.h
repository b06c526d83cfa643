// SPDX-License-Identifier: GPL-3.0-or-later
// Text from a file, as the command prints it.
#pragma once

#include "text/one_line.h"

#include <string>

namespace piolo::command {

/// Fit for one line of a terminal, as text::onOneLine().
[[nodiscard]] inline std::string printed(const std::string& text) {
    return text::onOneLine(text).toStdString();
}

} // namespace piolo::command
