// SPDX-License-Identifier: GPL-3.0-or-later
// The rule: what a clean run and a miss do to tempo and streak. Pure functions on values; noexcept, no
// memory, real-time-safe: the engine applies them on the audio thread.
#pragma once

#include "core/time/tempo.h"

#include <cstdint>

namespace piolo {

enum class StepKind : std::uint8_t { bpm, notches };

/// What moves the tempo. 1 <= drop, climb <= 100; 1 <= cleanRuns <= 100; floor <= target.
struct Rule {
    StepKind step = StepKind::bpm;
    std::int32_t drop = 4;
    std::int32_t climb = 2;
    std::int32_t cleanRuns = 5;
    Tempo floor = Tempo::bpm(40);
    Tempo target = Tempo::bpm(120);
    /// Within two climbs of the target a miss drops by one climb; at the target one miss only ends the
    /// streak, and the second of two running drops.
    bool gentle = false;
    constexpr bool operator==(const Rule&) const noexcept = default;
};

/// Where a passage stands.
struct Standing {
    Tempo tempo = Tempo::bpm(60);
    std::int32_t streak = 0;
    bool spared = false; ///< the last run was a miss at the target that did not drop (gentle rules only)
    constexpr bool operator==(const Standing&) const noexcept = default;
};

/// What one run did.
struct Outcome {
    Standing after;
    bool fullStreak = false; ///< the streak was completed
    bool climbed = false;    ///< the tempo went up
    bool dropped = false;    ///< the tempo went down
    bool secure = false;     ///< a full streak at or above the target
};

/// How a run ended. `voided`: logged, moves nothing.
enum class Mark : std::uint8_t { clean, missed, voided };

[[nodiscard]] Outcome afterClean(Standing before, const Rule& rule) noexcept;
[[nodiscard]] Outcome afterMiss(Standing before, const Rule& rule) noexcept;
/// `before`, first set to the tempo the run was played at (streak 0 when that is another tempo), then the
/// mark.
[[nodiscard]] Outcome afterRun(Standing before, Tempo played, Mark mark, const Rule& rule) noexcept;
/// A tempo set by hand: streak 0.
[[nodiscard]] Standing handSet(Tempo tempo) noexcept;
/// The passage was edited: the tempo is clamped into floor…target, the streak is 0 if that moved it.
[[nodiscard]] Standing edited(Standing before, const Rule& rule) noexcept;
/// One step of `size` up or down, inside 10…400 BPM; neither floor nor target is looked at.
[[nodiscard]] Tempo stepUp(Tempo from, StepKind kind, std::int32_t size) noexcept;
[[nodiscard]] Tempo stepDown(Tempo from, StepKind kind, std::int32_t size) noexcept;

/// Where a new day opens (a practice setting).
enum class DayOpening : std::uint8_t { twoRungsBelow, asLeft, start };

/// The tempo at which a new day opens. `lastFullStreak` is the tempo of the newest full streak, or nothing:
/// then twoRungsBelow opens at the start. Rungs are climbs apart; the result lies in max(floor, start)…target
/// for twoRungsBelow, and is `left` itself for asLeft.
[[nodiscard]] Tempo dayOpens(DayOpening opening, Tempo left, const Tempo* lastFullStreak, Tempo start,
                             const Rule& rule) noexcept;

} // namespace piolo
