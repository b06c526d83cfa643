// SPDX-License-Identifier: GPL-3.0-or-later
// Limits shared by the two ways of reading a line.
#pragma once

#include "core/history/fact.h"

#include <cstdint>

namespace piolo::journal {

inline constexpr std::int64_t leastSpotBar = -1;
inline constexpr std::int64_t mostSpotBar = 999'999; ///< an open-ended run has no limit
inline constexpr std::int64_t mostSpotBeat = 32;
inline constexpr std::int64_t mostSpotPart = 999; ///< thousandths of a beat

/// True if a tempo can be set for that reason.
[[nodiscard]] constexpr bool setsTempo(Reason reason) noexcept {
    return reason == Reason::hand || reason == Reason::newDay || reason == Reason::offer ||
           reason == Reason::named;
}

} // namespace piolo::journal
