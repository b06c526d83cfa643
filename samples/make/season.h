// SPDX-License-Identifier: GPL-3.0-or-later
// Five weeks of practice before a concert.
#pragma once

#include "core/history/fact.h"

#include <cstdint>
#include <vector>

namespace piolo::samples {

inline constexpr std::uint64_t sampleSeed = 20260509;

/// All facts of the season in the order in which they were written. The same seed gives the same facts.
[[nodiscard]] std::vector<Fact> playSeason(std::uint64_t seed);

} // namespace piolo::samples
