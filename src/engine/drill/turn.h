// SPDX-License-Identifier: GPL-3.0-or-later
// One passage's turn in a set: when it is over, and how it is announced.
#pragma once

#include <cstdint>

namespace piolo::engine {

struct Turn {
    static constexpr std::int32_t mostPlaces = 4;

    std::int32_t place = 0;   ///< 1…4: as many tones before the first count-in; 0: no turn
    std::int32_t runs = 0;    ///< over after so many runs; void runs do not count; 0: not limited by runs
    std::int32_t seconds = 0; ///< over with the run that ends so much playing time after the first count-in
                              ///< began, or later; 0: not limited by time
    bool follows = false;     ///< another turn has just ended: until the first note, a press for a miss still
                              ///< belongs to that one, and runs without a key press go on counting

    bool operator==(const Turn&) const noexcept = default;
};

/// The turn with all numbers limited to their ranges. Real-time-safe.
[[nodiscard]] Turn inRange(Turn turn) noexcept;

} // namespace piolo::engine
