// SPDX-License-Identifier: GPL-3.0-or-later
// Text from outside, made fit for one line of a screen or a terminal.
#pragma once

#include <QString>

#include <string>

namespace piolo::text {

/// The text with a replacement for every character that would break the line, control a terminal or is no
/// character. Any thread.
[[nodiscard]] QString onOneLine(const std::string& raw);
/// The same for a name within other text: if it is written from right to left, or has characters that change
/// the direction, it is isolated from what stands around it (Unicode Standard Annex 9, FSI and PDI). Not for
/// what is typed into. Any thread.
[[nodiscard]] QString nameShown(const std::string& raw);

} // namespace piolo::text
