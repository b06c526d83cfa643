// SPDX-License-Identifier: GPL-3.0-or-later
// What keeps a sum of sounds below full scale.
#pragma once

#include <cmath>

namespace piolo::engine {

/// Up to here a sum is left as it is.
inline constexpr float knee = 0.9F;

/// Leaves what lies inside ±0.9 as it is and bends what is beyond towards ±1, which it never reaches.
/// Real-time-safe.
[[nodiscard]] inline float bent(float value) noexcept {
    const float beyond = std::abs(value) - knee;
    if (beyond <= 0.0F) return value;
    constexpr float head = 1.0F - knee;
    return std::copysign(knee + head * beyond / (beyond + head), value);
}

} // namespace piolo::engine
