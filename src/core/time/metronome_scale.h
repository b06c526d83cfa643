// SPDX-License-Identifier: GPL-3.0-or-later
// The traditional metronome scale (40 42 44 … 208), extended in steps of 2 below and of 8 above.
#pragma once

#include "core/time/tempo.h"

#include <array>

namespace piolo {

/// The 39 traditional values, in BPM. docs/rule.md names the source.
inline constexpr std::array<int, 39> metronomeScale{
    40, 42,  44,  46,  48,  50,  52,  54,  56,  58,  60,  63,  66,  69,  72,  76,  80,  84,  88, 92,
    96, 100, 104, 108, 112, 116, 120, 126, 132, 138, 144, 152, 160, 168, 176, 184, 192, 200, 208};

/// The next value strictly above (below) `from`, or the end of the range if there is none. Noexcept, without
/// allocation.
[[nodiscard]] Tempo notchAbove(Tempo from) noexcept;
[[nodiscard]] Tempo notchBelow(Tempo from) noexcept;

} // namespace piolo
