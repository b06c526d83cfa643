// SPDX-License-Identifier: GPL-3.0-or-later
// Runs that were ticked on paper: the order in which they are recorded, and what they come to.
#pragma once

#include "core/history/notebook.h"

#include <span>
#include <vector>

namespace piolo {

/// What stands on one rung of a sheet.
struct PaperRung {
    Tempo tempo = Tempo::bpm(60);
    int clean = 0; ///< circles ticked
    int missed = 0;
};

/// Rung by rung as they are given; on each the misses first, then the clean runs: a miss rubs out the ticks
/// of its rung, so those that are left came after it, in a row.
[[nodiscard]] std::vector<RunFact> enteredRuns(Id passage, std::span<const PaperRung> rungs);

/// Where a passage stands once runs are recorded.
struct PaperOutcome {
    Standing standing;
    std::optional<Tempo> best; ///< the highest tempo with a full streak, earlier ones included
    int secures = 0;           ///< full streaks at the target that these runs add
};

/// What recording `runs` as of `day` would make of the passage: the same as the fold.
[[nodiscard]] PaperOutcome outcomeOf(const PassageRecord& record, Date day, std::span<const RunFact> runs);

} // namespace piolo
