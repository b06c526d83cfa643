// SPDX-License-Identifier: GPL-3.0-or-later
// All that the engine needs to know to drill one passage: a plain value, copied between threads.
#pragma once

#include "core/passage/passage.h"
#include "core/passage/practice_settings.h"
#include "engine/click/click_choice.h"
#include "engine/drill/turn.h"
#include "engine/time/breaths.h"

#include <cstdint>
#include <type_traits>

namespace piolo::engine {

struct DrillPlan {
    std::int32_t beatsPerBar = 4;  ///< 1…32
    std::uint32_t groupStarts = 1; ///< bit b: a group begins at beat b
    std::int32_t subdivision = 1;  ///< pulses per beat, 1…8
    Fraction swing{1, 1};          ///< long : short in each pair of pulses; 1:1 if their number is odd
    ClickChoice click;
    Breaths breaths;
    Fraction pickupBeats;  ///< in beats, in lowest terms, shorter than a bar
    std::int32_t bars = 4; ///< 0: open-ended
    bool landing = true;
    std::int32_t countInBars = 1; ///< 0…4
    std::int32_t breathBeats = 2; ///< 0…8
    Tempo start = Tempo::bpm(60); ///< the passage's start tempo, for the pause after two drops below it
    Rule rule;
    Standing standing;      ///< the current standing
    bool apart = false;     ///< its runs do not change the standing
    bool once = false;      ///< stops after one run
    bool clickless = false; ///< silent from the first note on; the landing note sounds again
    std::int32_t gapMillisAfterMiss = 4000;
    bool playOn = false;
    std::int32_t pauseAfterRuns = 20; ///< 0: never
    Turn turn;                        ///< in a set; the usual one is no turn
};
static_assert(std::is_trivially_copyable_v<DrillPlan>);

/// The plan for a passage at the given standing.
[[nodiscard]] DrillPlan planOf(const Passage& passage, Standing standing, const PracticeSettings& settings);

} // namespace piolo::engine
