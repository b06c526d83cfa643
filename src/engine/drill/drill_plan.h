// SPDX-License-Identifier: GPL-3.0-or-later
// All that the engine needs to know to drill one passage: a plain value that crosses threads by copy.
#pragma once

#include "core/passage/passage.h"
#include "engine/click/click_choice.h"
#include "engine/time/breaths.h"

#include <cstdint>
#include <type_traits>

namespace piolo::engine {

struct DrillPlan {
    std::int32_t beatsPerBar = 4;  ///< 1…32
    std::uint32_t groupStarts = 1; ///< bit b: a group begins on beat b
    std::int32_t subdivision = 1;  ///< pulses to the beat, 1…8
    Fraction swing{1, 1};          ///< long : short of each pair of pulses; 1:1 when they are odd
    ClickChoice click;
    Breaths breaths;
    Fraction pickupBeats;  ///< in beats, lowest terms, shorter than a bar
    std::int32_t bars = 4; ///< 0: open-ended
    bool landing = true;
    std::int32_t countInBars = 1; ///< 0…4
    std::int32_t breathBeats = 2; ///< 0…8
    Tempo start = Tempo::bpm(60); ///< the passage's start, for the offer after two drops below it
    Rule rule;
    Standing standing;      ///< where it stands now
    bool apart = false;     ///< its runs move nothing
    bool once = false;      ///< one run, then it stops
    bool clickless = false; ///< silent from the first note to the landing note, which sounds again
    std::int32_t gapMillisAfterMiss = 4000;
    bool playOn = false;
    std::int32_t pauseAfterRuns = 20; ///< 0: never
};
static_assert(std::is_trivially_copyable_v<DrillPlan>);

/// The plan of a passage that stands at `standing`.
[[nodiscard]] DrillPlan planOf(const Passage& passage, Standing standing, const PracticeSettings& settings);

} // namespace piolo::engine
