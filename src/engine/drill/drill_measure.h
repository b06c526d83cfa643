// SPDX-License-Identifier: GPL-3.0-or-later
// The lengths of a drill's parts, in ticks of its grid: what fits both the subdivision and the pick-up.
#pragma once

#include "engine/drill/drill_plan.h"
#include "engine/time/beat_parts.h"
#include "engine/time/waits.h"

#include <cstdint>

namespace piolo::engine {

/// All lengths are in ticks, `perBeat` of them to the beat. Real-time-safe.
struct DrillMeasure {
    std::uint64_t perBeat = 1;
    BeatParts parts; ///< where the pulses of a beat lie
    std::uint64_t bar = 4;
    std::uint64_t pickup = 0;
    std::uint64_t lead = 0;    ///< of the bar with the pick-up: what comes before it
    std::uint64_t countIn = 0; ///< the bars and the lead
    std::uint64_t breath = 0;
    std::uint64_t bars = 0; ///< the whole bars of a run, without its waits; 0: open-ended
    Waits waits;            ///< of a run below the tempo at which nobody waits

    static DrillMeasure of(const DrillPlan& plan) noexcept;
};

/// The plan with every number that lengths, waits and steps are made of inside its range; a pick-up as long
/// as a bar is none. The order of floor, start and target and what is left to chance stay as they are.
[[nodiscard]] DrillPlan inRange(DrillPlan plan) noexcept;
/// Neither count-in nor breath nor pick-up: the next run's first downbeat is the landing note.
[[nodiscard]] bool isGapless(const DrillPlan& plan) noexcept;
/// Whole bars between a miss and the next first note (its lead-in apart): enough for the setting and for
/// breath and count-in.
[[nodiscard]] std::uint64_t gapBarsAfterMiss(const DrillPlan& plan, Tempo tempo) noexcept;

} // namespace piolo::engine
