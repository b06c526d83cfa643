// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage breaks: its misses, bar by bar.
#pragma once

#include "core/history/misses.h"

#include <cstdint>
#include <vector>

namespace piolo::practice {

/// How often a bar was missed, by beat, or in total as a single column.
struct BreakBar {
    std::int32_t number = 0; ///< the part's own
    std::vector<int> columns;

    [[nodiscard]] int total() const;
};

/// Plain values.
struct BreakFigures {
    static constexpr std::size_t mostBars = 64;

    /// In order, including bars of the context that were missed. If that would be more than mostBars, only
    /// those that were missed; if these are too many, the worst of them.
    std::vector<BreakBar> bars;
    bool onlyMissed = false; ///< bars without a miss are left out
    std::size_t leftOut = 0; ///< bars with misses that are not among the worst
    bool byBeat = true;      ///< up to eight bars; longer and open-ended passages are counted by bar
    int most = 0;            ///< the highest of all columns

    /// Relative to the highest column, 0…1.
    [[nodiscard]] double share(int count) const;
    /// True if it has at least half as many misses as the worst bar.
    [[nodiscard]] bool isWorst(int count) const { return most > 1 && 2 * count >= most; }
};

[[nodiscard]] BreakFigures breaksOf(const Music& music, const Misses& misses);

} // namespace piolo::practice
