// SPDX-License-Identifier: GPL-3.0-or-later
// How a beat is divided: where its pulses are, swung or even, in whole ticks.
#pragma once

#include "core/time/fraction.h"

#include <array>
#include <cstdint>

namespace piolo::engine {

/// The pulses of one beat; all beats are alike. The first is the beat itself, which swing does not move.
/// Real-time-safe.
struct BeatParts {
    std::uint64_t perBeat = 1;         ///< ticks per beat, below 2^24
    std::int32_t count = 1;            ///< pulses, 1…8
    std::array<std::uint64_t, 8> at{}; ///< the tick of each pulse, from the beat

    /// `swing`: long : short in each pair of pulses, 1:1 if `pulses` is odd. `finer`: the beat must also
    /// divide into that many ticks, at most 999.
    static BeatParts of(std::int32_t pulses, Fraction swing, std::int32_t finer = 1) noexcept;
    /// The last pulse at or before `tick` of a beat, counted from 0.
    [[nodiscard]] std::int32_t partAt(std::uint64_t tick) const noexcept;
    /// The tick of the first pulse at or after `tick` of a beat; the beginning of the next beat if there is
    /// none.
    [[nodiscard]] std::uint64_t next(std::uint64_t tick) const noexcept;
};

} // namespace piolo::engine
