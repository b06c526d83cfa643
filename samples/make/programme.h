// SPDX-License-Identifier: GPL-3.0-or-later
// What an invented community wind band plays at its spring concert, and how hard one clarinettist finds it.
#pragma once

#include "core/history/fact.h"
#include "seeded.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace piolo::samples {

struct Days {
    Date first;
    Date last;
    [[nodiscard]] bool hold(Date date) const { return first <= date && date <= last; }
};

/// How hard a passage is for this player. Tempi in thousandths of a BPM.
struct Difficulty {
    std::int64_t even = 0;       ///< the tempo at which half the runs of the first day are clean
    std::int64_t width = 0;      ///< how sharply the share of clean runs changes with the tempo
    std::int64_t ceiling = 0;    ///< the highest value that `even` can reach
    std::int64_t gain = 0;       ///< what a run on the first day adds to `even`
    std::int64_t overnight = 0;  ///< what a night after practice adds
    std::optional<Days> plateau; ///< no progress on these days
    Spot hard;                   ///< where most misses happen
};

/// A passage and how it is practised.
struct Lot {
    Passage passage;
    Difficulty difficulty;
    Date begins;
    int everyDays = 1;                   ///< practised every so many days from `begins` on
    int runs = 12;                       ///< in one sitting, approximately
    Stage furthest = Stage::runThroughs; ///< the furthest stage the player reaches this season
};

struct Programme {
    std::vector<Piece> pieces;
    std::vector<Lot> lots;
    Days season;
    std::vector<Date> rehearsals; ///< the march is played from start to finish
    std::vector<Date> missedDays; ///< no practice at all
    std::vector<Date> badDays;    ///< nothing goes well
};

/// Ids come from `random`; everything else is fixed.
Programme springConcert(Seeded& random);

} // namespace piolo::samples
