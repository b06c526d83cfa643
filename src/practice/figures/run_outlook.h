// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's expected times and number of clean runs, before it is played.
#pragma once

#include "core/history/passage_record.h"
#include "core/passage/passage.h"

#include <cstdint>
#include <optional>

namespace piolo::practice {

/// Plain values.
struct RunOutlook {
    double cleanShare = 0;                    ///< share of clean runs at which the rule settles
    int runsToMove = 0;                       ///< approximate number of runs to the next climb or secure if 9
                                              ///< of 10 are clean
    bool climbs = false;                      ///< below the target, so a climb comes next
    std::optional<std::int64_t> runMillis;    ///< nothing for an open-ended passage
    std::optional<std::int64_t> targetMillis; ///< the time to the target
    /// The number of clean runs to require for a run of this length; 0 if it is too long for any streak.
    int reasonableCleanRuns = 0;
    int cleanRuns = 0; ///< the number required now

    /// The number of clean runs that would be better; 0 if none would, or if the current one is fine.
    [[nodiscard]] int fewerCleanRuns() const;
};

/// Where the next run of a passage starts once it has these tempi; `record` is null if it is not recorded
/// yet.
[[nodiscard]] Standing standingWith(const Tempi& tempi, const PassageRecord* record);
/// The outlook of that passage with that standing.
[[nodiscard]] RunOutlook outlookOf(const Passage& passage, const Standing& standing);

} // namespace piolo::practice
