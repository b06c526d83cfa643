// SPDX-License-Identifier: GPL-3.0-or-later
// Exact time: which sample a pulse falls on. Integers only, computed from the origin, never by adding a
// rounded period.
#pragma once

#include "core/time/tempo.h"
#include "engine/queue/renderer.h"

#include <cstdint>

namespace piolo::engine {

/// Where a segment of one tempo begins: a sample number and a binary fraction of a sample (in units of
/// 2^-64).
struct Origin {
    std::uint64_t sample = 0;
    std::uint64_t fraction = 0;
    constexpr bool operator==(const Origin&) const noexcept = default;
};

/// The pulses of one segment: with n pulses per beat, pulse k is at origin + k·60·rate / (tempo·n).
struct PulseGrid {
    Origin origin;
    Tempo tempo = Tempo::bpm(60);
    SampleRate rate;
    std::int64_t perBeat = 1; ///< n: 1…2^24 (as required by subdivision, swing and pick-up)

    /// The sample nearest to pulse k (halves round up). Real-time-safe. 0 <= k < 2^52.
    [[nodiscard]] std::uint64_t sampleOf(std::uint64_t k) const noexcept;
    /// The exact position of pulse k as the origin of the next segment, rounded to the fraction once.
    /// Real-time-safe.
    [[nodiscard]] Origin originAt(std::uint64_t k) const noexcept;
};

} // namespace piolo::engine
