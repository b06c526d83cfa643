// SPDX-License-Identifier: GPL-3.0-or-later
// What an invented community wind band plays at its spring concert, and how one clarinettist finds it.
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
    std::int64_t even = 0;       ///< the tempo at which half of the first day's runs are clean
    std::int64_t width = 0;      ///< how sharply that changes with the tempo
    std::int64_t ceiling = 0;    ///< where `even` could go in the end
    std::int64_t gain = 0;       ///< what a run adds to `even` on the first day
    std::int64_t overnight = 0;  ///< what a night after practice adds
    std::optional<Days> plateau; ///< nothing is gained then
    Spot hard;                   ///< where most misses are
};

/// A passage, and how it is practised.
struct Lot {
    Passage passage;
    Difficulty difficulty;
    Date begins;
    int everyDays = 1;                   ///< on each such day from its first
    int runs = 12;                       ///< in one sitting, about
    Stage furthest = Stage::runThroughs; ///< the player goes no further this season
};

struct Programme {
    std::vector<Piece> pieces;
    std::vector<Lot> lots;
    Days season;
    std::vector<Date> rehearsals; ///< the march is played through
    std::vector<Date> missedDays; ///< nothing is played
    std::vector<Date> badDays;    ///< nothing comes off
};

/// Ids come from `random`; all else is fixed.
Programme springConcert(Seeded& random);

} // namespace piolo::samples
