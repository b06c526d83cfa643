// SPDX-License-Identifier: GPL-3.0-or-later
// Where the drill stands after its runs, and what would make it pause.
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
    std::int32_t dropsBelowStart = 0; ///< drops that ended below the start since the last climb or pause

    /// One run more, by the rule of `plan`. A run that stands apart moves nothing.
    Outcome add(Tempo played, Mark mark, const DrillPlan& plan) noexcept;
    /// Why to pause now. `runsWithoutKey` in a row were ended without a key.
    [[nodiscard]] std::optional<Pause> pauseDue(std::int32_t runsWithoutKey,
                                                const DrillPlan& plan) const noexcept;
    void forgetMisses() noexcept;
};

} // namespace piolo::engine
