// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of one day of the log: consecutive runs of one passage at one tempo share a line.
#pragma once

#include "practice/log/log_index.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace piolo::practice {

/// Consecutive entries, oldest first, or one run-through. Plain values; the pointers are valid until the
/// notebook changes.
struct LogLine {
    const PassageRecord* record = nullptr; ///< null for a run-through
    std::vector<const Entry*> entries;     ///< at least one, except for a run-through
    std::optional<RunThrough> through;
    std::string pieceName; ///< for a run-through

    [[nodiscard]] Timestamp at() const { return through ? through->at : entries.front()->at; }
    /// The number of runs with that mark.
    [[nodiscard]] int count(Mark mark) const;
};

/// The sums of a day's lines.
struct LogDayFigures {
    std::int64_t millis = 0;
    int runs = 0; ///< clean and missed, of every kind
    int clean = 0;
};

/// In the order played. A line ends where the passage, kind or tempo changes, and after a run that changed
/// the tempo or completed a streak. Unless the filter asks for tempi, only the first tempo of a new day has a
/// line, and of tempi of one passage that follow each other only the last.
[[nodiscard]] std::vector<LogLine> linesOf(const Notebook& notebook, const LogDay& day,
                                           const LogFilter& filter);
[[nodiscard]] LogDayFigures figuresOf(const std::vector<LogLine>& lines);

} // namespace piolo::practice
