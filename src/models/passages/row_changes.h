// SPDX-License-Identifier: GPL-3.0-or-later
// What turns one list of passages into another, for a view that keeps the rows that stay.
#pragma once

#include "models/passages/passage_row.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// Rows first … last.
struct RowRun {
    int first = 0;
    int last = 0;
    [[nodiscard]] int count() const { return last - first + 1; }
    bool operator==(const RowRun&) const = default;
};

struct RowChanges {
    std::vector<RowRun> removed;  ///< places in the old list, from its end to its beginning
    std::vector<RowRun> inserted; ///< places in the new list, from its beginning to its end
};

/// With more changes than these, a view is quicker if it makes all its rows again.
inline constexpr std::size_t mostRowChanges = 32;

/// A row is the same if passage and piece are. Nothing if a row that stays has moved, or if there are more
/// than mostRowChanges. Each passage occurs once in a list.
[[nodiscard]] std::optional<RowChanges> rowChanges(const std::vector<PassageRow>& before,
                                                   const std::vector<PassageRow>& after);

} // namespace piolo::models
