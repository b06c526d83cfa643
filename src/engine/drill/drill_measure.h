// SPDX-License-Identifier: GPL-3.0-or-later
// The lengths of a drill's parts, in ticks of a grid that fits both the subdivision and the pick-up.
#pragma once

#include "engine/drill/drill_plan.h"
#include "engine/time/beat_parts.h"
#include "engine/time/waits.h"

#include <cstdint>

namespace piolo::engine {

/// All lengths are in ticks, `perBeat` of them per beat. Real-time-safe.
struct DrillMeasure {
    std::uint64_t perBeat = 1;
    BeatParts parts; ///< where the pulses of a beat are
    std::uint64_t bar = 4;
    std::uint64_t pickup = 0;
    std::uint64_t lead = 0;    ///< the part of the pick-up's bar before the pick-up
    std::uint64_t countIn = 0; ///< the count-in bars and the lead
    std::uint64_t breath = 0;
    std::uint64_t bars = 0; ///< the whole bars of a run, without its waits; 0: open-ended
    Waits waits;            ///< the waits of a run below the tempo from which on there are none

    static DrillMeasure of(const DrillPlan& plan) noexcept;
};

/// The plan with all numbers that lengths, waits and steps depend on limited to their ranges; a pick-up as
/// long as a bar is dropped. The order of floor, start and target, and the chances, are left unchanged.
[[nodiscard]] DrillPlan inRange(DrillPlan plan) noexcept;
/// True without count-in, breath and pick-up: the landing note is then the first downbeat of the next run.
[[nodiscard]] bool isGapless(const DrillPlan& plan) noexcept;
/// Whole bars between a miss and the next first note (not counting its lead): enough for the configured gap,
/// and for breath and count-in.
[[nodiscard]] std::uint64_t gapBarsAfterMiss(const DrillPlan& plan, Tempo tempo) noexcept;

} // namespace piolo::engine
