// SPDX-License-Identifier: GPL-3.0-or-later
// Runs that were ticked on paper: the order in which they are recorded, and their result.
#pragma once

#include "core/history/notebook.h"

#include <span>
#include <vector>

namespace piolo {

/// The ticks on one rung of a sheet.
struct PaperRung {
    Tempo tempo = Tempo::bpm(60);
    int clean = 0; ///< circles ticked
    int missed = 0;
};

/// Rung by rung in the given order. On each rung the misses come first, then the clean runs: a miss erases
/// the ticks of its rung, so the remaining ones came after it, in a row.
[[nodiscard]] std::vector<RunFact> enteredRuns(Id passage, std::span<const PaperRung> rungs);

/// The result of recording runs for a passage.
struct PaperOutcome {
    Standing standing;
    std::optional<Tempo> best; ///< the highest tempo with a full streak, including earlier ones
    int secures = 0;           ///< full streaks at the target that these runs add
};

/// The result of recording `runs` on `day`: the same as folding them.
[[nodiscard]] PaperOutcome outcomeOf(const PassageRecord& record, Date day, std::span<const RunFact> runs);

} // namespace piolo
