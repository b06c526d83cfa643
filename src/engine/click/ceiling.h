// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps a sum of sounds below full scale.
#pragma once

#include <cmath>

namespace piolo::engine {

/// Up to this level a sum is left unchanged.
inline constexpr float knee = 0.9F;

/// Leaves values within ±0.9 unchanged and compresses larger ones towards ±1, which they never reach.
/// Real-time-safe.
[[nodiscard]] inline float bent(float value) noexcept {
    const float beyond = std::abs(value) - knee;
    if (beyond <= 0.0F) return value;
    constexpr float head = 1.0F - knee;
    return std::copysign(knee + head * beyond / (beyond + head), value);
}

} // namespace piolo::engine
