// SPDX-License-Identifier: GPL-3.0-or-later
// What the practice log says for a passage's next stage. The player decides.
#pragma once

#include "core/history/notebook.h"

#include <span>

namespace piolo {

/// Clean runs in a row on one day, at the target or above, without the click and in context.
inline constexpr std::int32_t cleanRunsForAStage = 3;
/// Run-throughs in a row with no stop inside the passage.
inline constexpr std::int32_t runThroughsForAStage = 2;

/// How near the next stage is.
struct StageStep {
    Stage next = Stage::secure; ///< of a passage in run-throughs: that same stage, kept once it is reached
    std::int32_t have = 0;
    std::int32_t need = 1;
    bool operator==(const StageStep&) const noexcept = default;
    [[nodiscard]] bool reached() const noexcept { return have >= need; }
};

/// The evidence that leads out of the stage in which the passage is:
/// - slow: one secure;
/// - secure: secures on so many different days as the settings say;
/// - withoutClick, inContext: the newest runs of that kind are clean, cleanRunsForAStage of them on one day;
/// - runThroughs: the newest run-throughs of its piece have no stop in its bars, runThroughsForAStage of
/// them. `runThroughs`: of the passage's piece, oldest first.
[[nodiscard]] StageStep nextStep(const PassageRecord& record, std::span<const RunThrough> runThroughs,
                                 const PracticeSettings& settings);

} // namespace piolo
