// SPDX-License-Identifier: GPL-3.0-or-later
// What the practice log suggests as a passage's next stage. The player decides.
#pragma once

#include "core/history/notebook.h"

#include <span>

namespace piolo {

/// Clean runs in a row on one day, at the target or above, without the click or in context.
inline constexpr std::int32_t cleanRunsForAStage = 3;
/// Run-throughs in a row without a stop inside the passage.
inline constexpr std::int32_t runThroughsForAStage = 2;

/// How close the next stage is.
struct StageStep {
    Stage next = Stage::secure; ///< for a passage in run-throughs: that same stage
    std::int32_t have = 0;
    std::int32_t need = 1;
    bool operator==(const StageStep&) const noexcept = default;
    [[nodiscard]] bool reached() const noexcept { return have >= need; }
};

/// The evidence needed to leave the passage's current stage:
/// - slow: one secure;
/// - secure: secures on as many different days as the settings require;
/// - withoutClick, inContext: the newest cleanRunsForAStage runs of that kind are clean and on one day;
/// - runThroughs: the newest runThroughsForAStage run-throughs of its piece have no stop in its bars.
/// `runThroughs` are those of the passage's piece, oldest first.
[[nodiscard]] StageStep nextStep(const PassageRecord& record, std::span<const RunThrough> runThroughs,
                                 const PracticeSettings& settings);

} // namespace piolo
