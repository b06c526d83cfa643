// SPDX-License-Identifier: GPL-3.0-or-later
// Which passages went worst of late, and why.
#pragma once

#include "practice/log/log_index.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo::practice {

/// So many days count, today included.
inline constexpr std::int64_t worstDays = 14;
/// Fewer runs than this say nothing about a passage.
inline constexpr int worstLeastRuns = 5;

/// Plain values.
struct WorstPassage {
    Id passage;
    int runs = 0; ///< clean and missed, only those that affect the rule
    int clean = 0;
    std::optional<std::int32_t> bar; ///< the bar with most of the misses, if it has two or more
};

/// The passages with the smallest share of clean runs, worst first; of equal ones, that with more misses,
/// then that made first. Removed passages, those with fewer runs than worstLeastRuns and those without a miss
/// are left out, and so are other pieces than that of the filter.
[[nodiscard]] std::vector<WorstPassage> worstPassages(const Notebook& notebook, Id piece, Date today,
                                                      std::size_t most);

} // namespace piolo::practice
