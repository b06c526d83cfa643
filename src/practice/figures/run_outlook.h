// SPDX-License-Identifier: GPL-3.0-or-later
// What a passage means in time and in clean runs, before it is played.
#pragma once

#include "core/passage/passage.h"

#include <cstdint>
#include <optional>

namespace piolo::practice {

/// Plain values.
struct RunOutlook {
    double cleanShare = 0;                    ///< of the runs, where the rule settles
    int runsToMove = 0;                       ///< about so many to the next climb or secure, at 9 clean in 10
    bool climbs = false;                      ///< below the target: what comes next is a climb
    std::optional<std::int64_t> runMillis;    ///< none for an open-ended passage
    std::optional<std::int64_t> targetMillis; ///< the time to the target
    /// Clean runs to ask for when a run is this long; 0 when it is too long for any streak.
    int reasonableCleanRuns = 0;
    int cleanRuns = 0; ///< asked for now

    /// Fewer clean runs would be better; 0: not, or nothing would do.
    [[nodiscard]] int fewerCleanRuns() const;
};

/// Of that passage, which stands there.
[[nodiscard]] RunOutlook outlookOf(const Passage& passage, const Standing& standing);

} // namespace piolo::practice
