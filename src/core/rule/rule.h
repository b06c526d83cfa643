// SPDX-License-Identifier: GPL-3.0-or-later
// The rule: what a clean run and a miss do to tempo and streak. Pure functions of values, noexcept, without
// allocation, real-time-safe: the engine applies them on the audio thread.
#pragma once

#include "core/rule/mark.h"
#include "core/rule/standing.h"
#include "core/rule/step_kind.h"
#include "core/time/tempo.h"

#include <cstdint>

namespace piolo {

/// How the tempo moves. 1 <= drop, climb <= 100; 1 <= cleanRuns <= 100; floor <= target.
struct Rule {
    static constexpr std::int32_t mostSteps = 100;

    StepKind step = StepKind::bpm;
    std::int32_t drop = 4;
    std::int32_t climb = 2;
    std::int32_t cleanRuns = 5;
    Tempo floor = Tempo::bpm(40);
    Tempo target = Tempo::bpm(120);
    /// Within two climbs of the target, a miss drops by one climb. At the target, the first miss only ends
    /// the streak; a second one in a row drops.
    bool gentle = false;
    constexpr bool operator==(const Rule&) const noexcept = default;
};

/// The effect of one run.
struct Outcome {
    Standing after;
    bool fullStreak = false; ///< it completed the streak
    bool climbed = false;    ///< it raised the tempo
    bool dropped = false;    ///< it lowered the tempo
    bool secure = false;     ///< a full streak at or above the target
};

[[nodiscard]] Outcome afterClean(Standing before, const Rule& rule) noexcept;
[[nodiscard]] Outcome afterMiss(Standing before, const Rule& rule) noexcept;
/// Applies the mark to `before`, after setting that to the tempo of the run (streak 0 if it is a different
/// tempo).
[[nodiscard]] Outcome afterRun(Standing before, Tempo played, Mark mark, const Rule& rule) noexcept;
/// The standing after a tempo was set by hand: streak 0.
[[nodiscard]] Standing handSet(Tempo tempo) noexcept;
/// The standing after the passage was edited: the tempo is clamped to floor…target; if that changes it, the
/// streak is 0.
[[nodiscard]] Standing edited(Standing before, const Rule& rule) noexcept;
/// One step of `size` up or down within 10…400 BPM; ignores floor and target.
[[nodiscard]] Tempo stepUp(Tempo from, StepKind kind, std::int32_t size) noexcept;
[[nodiscard]] Tempo stepDown(Tempo from, StepKind kind, std::int32_t size) noexcept;

} // namespace piolo
