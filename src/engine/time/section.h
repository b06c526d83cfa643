// SPDX-License-Identifier: GPL-3.0-or-later
// A section of the drill of one kind (gap, count-in, run), and where each of its ticks is in its bars.
#pragma once

#include "engine/drill/drill_measure.h"
#include "engine/queue/event.h"
#include "engine/time/pulse_grid.h"

#include <cstdint>
#include <limits>

namespace piolo::engine {

/// A position in the bars of a section.
struct BarPlace {
    std::int32_t bar = noBar;    ///< counted from 0; a pick-up is bar -1
    std::int32_t beat = 0;       ///< counted from 0
    std::int32_t part = 0;       ///< pulse inside the beat, counted from 0
    std::int32_t thousandth = 0; ///< of the beat, 0…999; set by placeAt() only
    bool waits = false;          ///< the run is waiting, before this position, for the player to breathe
};

/// Ticks of a grid from `start` to `end`. Real-time-safe.
struct Section {
    static constexpr std::uint64_t never = std::numeric_limits<std::uint64_t>::max();

    Phase phase = Phase::gap;
    std::uint64_t start = 0;
    std::uint64_t end = never;     ///< `never`: open-ended
    std::uint64_t offset = 0;      ///< the position of the first tick in its bar
    std::uint64_t landing = never; ///< the tick of the landing note
    std::int32_t firstBar = 0;
    bool breathes = false; ///< includes the measure's waits

    [[nodiscard]] BarPlace placeOf(std::uint64_t tick, const DrillMeasure& measure) const noexcept;
    /// The first pulse, beat or beginning of a bar at or after `tick`.
    [[nodiscard]] std::uint64_t nextPulse(std::uint64_t tick, const DrillMeasure& measure) const noexcept;
    [[nodiscard]] std::uint64_t nextBeat(std::uint64_t tick, const DrillMeasure& measure) const noexcept;
    [[nodiscard]] std::uint64_t nextBar(std::uint64_t tick, const DrillMeasure& measure) const noexcept;

private:
    /// Measured from the beginning of the first bar, including waits.
    [[nodiscard]] std::uint64_t sinceBar(std::uint64_t tick) const noexcept { return tick - start + offset; }
    [[nodiscard]] Waits::Stand standAt(std::uint64_t tick, const DrillMeasure& measure) const noexcept;
};

/// The position that sounds at `sample`, inside `section` on `grid`.
[[nodiscard]] BarPlace placeAt(std::uint64_t sample, const Section& section, const PulseGrid& grid,
                               const DrillMeasure& measure) noexcept;

} // namespace piolo::engine
