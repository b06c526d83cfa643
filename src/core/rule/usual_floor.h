// SPDX-License-Identifier: GPL-3.0-or-later
// The floor of a rule that does not name one.
#pragma once

#include "core/time/tempo.h"

#include <algorithm>

namespace piolo {

/// 40, or the start if that is lower.
[[nodiscard]] inline Tempo usualFloor(Tempo start) { return std::min(Tempo::bpm(40), start); }

} // namespace piolo
