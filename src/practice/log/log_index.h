// SPDX-License-Identifier: GPL-3.0-or-later
// Which entries belong to which day: the index for reading the log a day at a time.
#pragma once

#include "core/history/notebook.h"

#include <optional>
#include <vector>

namespace piolo::practice {

/// Which part of the log to show. An empty member does not filter.
struct LogFilter {
    Id piece;   ///< only passages of this piece
    Id passage; ///< only this passage
    std::optional<Entry::Kind> kind;
    bool runThroughsOnly = false;
    std::optional<Date> from; ///< first day, inclusive
    bool operator==(const LogFilter&) const = default;

    /// True if an entry of that kind passes the filter.
    [[nodiscard]] bool takes(Entry::Kind wanted) const noexcept {
        return !runThroughsOnly && (!kind || *kind == wanted);
    }
    /// Run-throughs belong to a piece as a whole and have no kind of run.
    [[nodiscard]] bool takesRunThroughs() const noexcept { return passage.isNone() && !kind; }
};

/// Entries first … first + count - 1 of a passage's record; may include entries of kinds that the filter
/// excludes.
struct LogSpan {
    Id passage;
    std::size_t first = 0;
    std::size_t count = 0;
    bool operator==(const LogSpan&) const = default;
};

/// A run-through of a piece, by index.
struct LogThrough {
    Id piece;
    std::size_t index = 0;
    bool operator==(const LogThrough&) const = default;
};

struct LogDay {
    Date date;
    std::vector<LogSpan> spans;
    std::vector<LogThrough> throughs;
    bool operator==(const LogDay&) const = default;
};

/// The days with at least one entry that passes the filter, newest first, including removed passages and
/// pieces. One pass over the entries, reading only their time and kind.
[[nodiscard]] std::vector<LogDay> logDays(const Notebook& notebook, const LogFilter& filter);

} // namespace piolo::practice
