// SPDX-License-Identifier: GPL-3.0-or-later
// Exact positions in samples, computed as fractions of integers, independently of the grid.
#pragma once

#include "core/time/tempo.h"
#include "engine/queue/renderer.h"

#include <cstdint>

namespace piolo::engine {

/// The sample nearest to `beats` + `numerator`/`denominator` beats from the beginning; halves round up. All
/// arguments are below 2^20, so nothing exceeds 2^125.
inline std::uint64_t nearestSample(std::uint64_t beats, std::uint64_t numerator, std::uint64_t denominator,
                                   Tempo tempo, SampleRate rate) {
    using Wide = unsigned __int128;
    const Wide above = (Wide{beats} * denominator + numerator) * 60'000U * static_cast<unsigned>(rate.hertz);
    const Wide below = Wide{denominator} * static_cast<unsigned>(tempo.thousandths());
    return static_cast<std::uint64_t>((2 * above + below) / (2 * below));
}

} // namespace piolo::engine
