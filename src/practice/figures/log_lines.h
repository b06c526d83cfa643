// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of one day of the log: runs of one passage, one after the other at one tempo, are one line.
#pragma once

#include "practice/log/log_index.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace piolo::practice {

/// Entries that stand together, oldest first, or one run-through. Plain values; the pointers are good until
/// the notebook changes.
struct LogLine {
    const PassageRecord* record = nullptr; ///< null: a run-through
    std::vector<const Entry*> entries;     ///< at least one, except in a run-through
    std::optional<RunThrough> through;
    std::string pieceName; ///< of a run-through

    [[nodiscard]] Timestamp at() const { return through ? through->at : entries.front()->at; }
    /// How many runs have that mark.
    [[nodiscard]] int count(Mark mark) const;
};

/// What a day's lines add up to.
struct LogDayFigures {
    std::int64_t millis = 0;
    int runs = 0; ///< clean and missed, of every kind
    int clean = 0;
};

/// In the order played. A line ends where the passage, the kind or the tempo changes, and after a run that
/// moved the tempo or completed a streak.
[[nodiscard]] std::vector<LogLine> linesOf(const Notebook& notebook, const LogDay& day,
                                           const LogFilter& filter);
[[nodiscard]] LogDayFigures figuresOf(const std::vector<LogLine>& lines);

} // namespace piolo::practice
