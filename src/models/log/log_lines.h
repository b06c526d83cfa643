// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of one day of the log: runs of one passage, one after the other at one tempo, are one line.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "practice/log/log_index.h"

#include <vector>

namespace piolo::models {

/// Entries that stand together, oldest first, or one run-through. The pointers are good until the notebook
/// changes.
struct LogLine {
    const PassageRecord* record = nullptr; ///< null: a run-through
    std::vector<const Entry*> entries;     ///< at least one, but for a run-through
    std::optional<RunThrough> through;
    std::string pieceName; ///< of a run-through

    [[nodiscard]] Timestamp at() const { return through ? through->at : entries.front()->at; }
};

/// What a day's lines add up to.
struct LogDayFigures {
    std::int64_t millis = 0;
    int runs = 0; ///< clean and missed, of every kind
    int clean = 0;
};

/// In the order played. A line ends where the passage, the kind or the tempo changes,
/// and after a run that moved the tempo or completed a streak.
[[nodiscard]] std::vector<LogLine> linesOf(const Notebook& notebook, const practice::LogDay& day,
                                           const practice::LogFilter& filter);
[[nodiscard]] LogDayFigures figuresOf(const std::vector<LogLine>& lines);

// The words below are for lines of entries.

/// "climbs to 82", "drops to 80 · bar 43, beat 3", "a try: moves nothing", "set by hand",
/// "climbs to 82 · on paper".
[[nodiscard]] QString effectWords(const LogLine& line);
/// "clean", "missed", "not counted: stopped"; empty for a tempo that was set.
[[nodiscard]] QString markWords(const Entry& entry);
/// "●●▼": a dot for each clean run, a triangle for a miss, a ring for a void one. Too many for a glance are
/// counted: "23 ● 2 ▼".
[[nodiscard]] QString markShapes(const LogLine& line);
/// The same for a reader: "2 clean, 1 missed".
[[nodiscard]] QString markCounts(const LogLine& line);

} // namespace piolo::models
