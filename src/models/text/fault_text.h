// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences of the numbered faults, translated.
#pragma once

#include "core/base/fault.h"

#include <QString>

#include <string>

namespace piolo::models {

/// The text with a mark in place of what would break a line or steer a terminal.
[[nodiscard]] QString onOneLine(const std::string& raw);
/// "what; what to do", without number and place.
[[nodiscard]] QString faultSentence(const Fault& fault);
/// "E123: FILE:LINE: what; what to do" ("FILE: " without a line; nothing for an empty place).
[[nodiscard]] QString faultLine(const Fault& fault);

} // namespace piolo::models
