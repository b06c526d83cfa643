// SPDX-License-Identifier: GPL-3.0-or-later
// How a beat is divided: where its pulses lie, swung or even, in whole ticks.
#pragma once

#include "core/time/fraction.h"

#include <array>
#include <cstdint>

namespace piolo::engine {

/// The pulses of one beat, all beats being alike. The first is the beat itself, which no swing moves.
/// Real-time-safe.
struct BeatParts {
    std::uint64_t perBeat = 1;         ///< ticks: below 2^24
    std::int32_t count = 1;            ///< pulses, 1…8
    std::array<std::uint64_t, 8> at{}; ///< the tick of each, from the beat

    /// `swing`: long : short of each pair of pulses, 1:1 when `pulses` is odd. `finer`: the beat must also
    /// divide into so many ticks, at most 999.
    static BeatParts of(std::int32_t pulses, Fraction swing, std::int32_t finer = 1) noexcept;
    /// The pulse that has sounded last at `tick` of a beat, from 0.
    [[nodiscard]] std::int32_t partAt(std::uint64_t tick) const noexcept;
    /// The tick of the first pulse at or after `tick` of a beat; the next beat's when there is none.
    [[nodiscard]] std::uint64_t next(std::uint64_t tick) const noexcept;
};

} // namespace piolo::engine
