// SPDX-License-Identifier: GPL-3.0-or-later
// Random choices without state: the same place always gives the same result.
#pragma once

#include <cstdint>

namespace piolo::engine {

/// 64 bits that all depend on every bit of `value`: the mixing step of splitmix64 (Steele, Lea and Flood,
/// "Fast splittable pseudorandom number generators", OOPSLA 2014). Real-time-safe.
[[nodiscard]] constexpr std::uint64_t mixed(std::uint64_t value) noexcept {
    value += 0x9E37'79B9'7F4A'7C15ULL;
    value = (value ^ (value >> 30U)) * 0xBF58'476D'1CE4'E5B9ULL;
    value = (value ^ (value >> 27U)) * 0x94D0'49BB'1331'11EBULL;
    return value ^ (value >> 31U);
}

/// One draw per place; `salt` keeps draws for different purposes independent. Real-time-safe.
struct Chance {
    std::uint64_t seed = 0;
    std::uint64_t salt = 0;

    /// True at `percent` % of all places.
    [[nodiscard]] constexpr bool hits(std::int32_t percent, std::uint64_t run, std::int64_t bar,
                                      std::int32_t beat) const noexcept {
        if (percent <= 0) return false;
        auto bits = mixed(mixed(seed) ^ salt);
        bits = mixed(bits ^ run);
        bits = mixed(bits ^ static_cast<std::uint64_t>(bar));
        bits = mixed(bits ^ static_cast<std::uint64_t>(beat));
        return (bits >> 32U) * 100U >> 32U < static_cast<std::uint64_t>(percent);
    }
};

} // namespace piolo::engine
