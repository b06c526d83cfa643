// SPDX-License-Identifier: GPL-3.0-or-later
// What happened between a start and a stop.
#pragma once

#include "core/history/passage_record.h"

#include <cstddef>
#include <set>

namespace piolo::practice {

struct SittingFigures {
    int clean = 0;
    int missed = 0;
    std::set<std::int32_t> missedBars; ///< where the misses were, as far as that is known
    [[nodiscard]] int runs() const { return clean + missed; }
};

/// Of the runs among the entries of `record` from the entry number `first` on; void runs do not count.
[[nodiscard]] SittingFigures sittingFigures(const PassageRecord& record, std::size_t first);

} // namespace piolo::practice
