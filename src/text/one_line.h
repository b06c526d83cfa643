// SPDX-License-Identifier: GPL-3.0-or-later
// Text from outside, made fit for one line of a screen or a terminal.
#pragma once

#include <QString>

#include <string>

namespace piolo::text {

/// The text with a replacement for every character that would break the line or control a terminal. Any
/// thread.
[[nodiscard]] QString onOneLine(const std::string& raw);

} // namespace piolo::text
