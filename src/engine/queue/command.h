// SPDX-License-Identifier: GPL-3.0-or-later
// Commands to the engine: plain values in a fixed single-producer, single-consumer queue.
#pragma once

#include "engine/click/click_plan.h"
#include "engine/click/mix.h"
#include "engine/drill/drill_plan.h"

#include <cstdint>
#include <type_traits>

namespace piolo::engine {

struct Command {
    enum class Kind : std::uint8_t {
        start,  ///< start drilling `plan` now; ends a playback
        miss,   ///< the player pressed the key for a miss while `sample` was audible
        clean,  ///< the player pressed the key for clean (open-ended runs only) while `sample` was audible
        stop,   ///< stop, also a playback; an unfinished run is void
        resume, ///< continue after a pause, starting with the count-in
        adopt,  ///< move to `standing` (after a mark was taken back); refused if `runsEnded` is out of date.
                ///< If the tempo changes, the count-in starts again at the next pulse; a pause stays a pause
        setMix, ///< use `mix` from the next pulse on; sounding clicks continue as they began
        withdraw, ///< press number `press` was not a miss: when playing on, its mark is removed from the
                  ///< current run, and a pause that it caused ends. What it ended stays ended. Always
                  ///< answered by `withdrawn`
        hear,     ///< play the playback prepared by DrillEngine::hear(); refused while the drill runs; ends a
                  ///< click without a passage
        click,    ///< click by `click` without a passage, or change the click with that number (SteadyClick);
                  ///< ends a playback. Refused while the drill runs, and ended when it starts or resumes
        endClick, ///< end the click with that number
    };
    Kind kind = Kind::stop;
    std::uint64_t sample = 0;    ///< in the engine's own count of rendered samples
    std::uint64_t press = 0;     ///< for miss and withdraw: the sender's number of the press, counted from 1
    std::uint64_t number = 0;    ///< for click and endClick: the sender's number of the click, counted from 1
    std::uint64_t runsEnded = 0; ///< for adopt: how many runEnded and lateMiss events the sender has seen
    Standing standing{};         ///< for adopt
    DrillPlan plan{};
    ClickPlan click{};
    Mix mix{};
    std::uint8_t playback = 0; ///< for hear: the slot of the playback
};
static_assert(std::is_trivially_copyable_v<Command>);

} // namespace piolo::engine
