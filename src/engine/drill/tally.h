// SPDX-License-Identifier: GPL-3.0-or-later
// The standing after each run, and what would make the drill pause.
#pragma once

#include "engine/drill/drill_plan.h"
#include "engine/queue/event.h"

#include <cstdint>
#include <optional>

namespace piolo::engine {

/// Real-time-safe.
struct Tally {
    Standing standing;
    std::int32_t misses = 0;          ///< since the last clean run or pause
    std::int32_t dropsBelowStart = 0; ///< drops to below the start tempo since the last climb or pause

    /// Adds a run by the rule of `plan`. A plan with `apart` changes nothing.
    Outcome add(Tempo played, Mark mark, const DrillPlan& plan) noexcept;
    /// The reason to pause now, if there is one. `runsWithoutKey`: how many runs in a row ended without a key
    /// press.
    [[nodiscard]] std::optional<Pause> pauseDue(std::int32_t runsWithoutKey,
                                                const DrillPlan& plan) const noexcept;
    void forgetMisses() noexcept;
};

} // namespace piolo::engine
