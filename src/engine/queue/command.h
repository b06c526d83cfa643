// SPDX-License-Identifier: GPL-3.0-or-later
// What is told to the engine: plain values through a fixed single-producer single-consumer queue.
#pragma once

#include "engine/click/mix.h"
#include "engine/drill/drill_plan.h"

#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// Where a new tempo takes hold.
enum class Boundary : std::uint8_t { pulse, beat, bar };

struct Command {
    enum class Kind : std::uint8_t {
        start,  ///< begin to drill `plan` now; a playback ends
        miss,   ///< the player's key for a miss, heard when `sample` was audible
        clean,  ///< the player's key for clean (open-ended runs only), heard when `sample` was audible
        stop,   ///< end, a playback too; a run that is not over is void
        resume, ///< go on after a pause, from the count-in
        adopt,  ///< stand at `standing` (after a mark was taken back); refused when runsEnded is out of date.
                ///< With another tempo the count-in comes again at the next pulse; a pause stays a pause
        setTempo, ///< by hand while it runs: `standing.tempo` at `boundary`; a run inside is void
        setMix,   ///< `mix`, from the next pulse on; a sounding click goes on as it began
        withdraw, ///< the press of number `press` was no miss: playing on, its mark leaves the present run; a
                  ///< pause that it caused ends. What it ended stays ended. Always answered by `withdrawn`
        hear,     ///< play the playback that DrillEngine::hear() has laid out; refused while the drill runs
    };
    Kind kind = Kind::stop;
    std::uint64_t sample = 0;    ///< in the engine's own count of rendered samples
    std::uint64_t press = 0;     ///< for miss and withdraw: the sender's number of the press, from 1
    std::uint64_t runsEnded = 0; ///< for adopt: how many runEnded and lateMiss events the sender had seen
    Standing standing{};         ///< for adopt and setTempo
    Boundary boundary = Boundary::beat;
    DrillPlan plan{};
    Mix mix{};
    std::uint8_t playback = 0; ///< for hear: where the playback lies
};
static_assert(std::is_trivially_copyable_v<Command>);

} // namespace piolo::engine
