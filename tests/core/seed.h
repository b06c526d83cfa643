// SPDX-License-Identifier: GPL-3.0-or-later
// The seed of the random tests: PIOLO_SEED or a fixed one; every failing test prints it.
#pragma once

#include <cstdint>
#include <cstdlib>
#include <random>

namespace piolo::testing {

[[nodiscard]] inline std::uint64_t seed() {
    const char* const given = std::getenv("PIOLO_SEED");
    return given == nullptr ? 20260301 : std::strtoull(given, nullptr, 10);
}

using Dice = std::mt19937_64;

/// 0 … sides - 1, the same on every machine.
[[nodiscard]] inline std::int32_t roll(Dice& dice, std::int32_t sides) {
    return static_cast<std::int32_t>(dice() % static_cast<std::uint64_t>(sides));
}

} // namespace piolo::testing
