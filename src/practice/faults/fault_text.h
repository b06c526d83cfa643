// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences of the numbered faults, translated.
#pragma once

#include "core/base/fault.h"

#include <QString>

namespace piolo::practice {

/// "what; what to do", without number and location.
[[nodiscard]] QString faultSentence(const Fault& fault);
/// "E123: FILE:LINE: what; what to do" ("FILE: " without a line; no location if it is empty).
[[nodiscard]] QString faultLine(const Fault& fault);

} // namespace piolo::practice
