// SPDX-License-Identifier: GPL-3.0-or-later
// Which entries stand on which day: the index by which the log is read a day at a time.
#pragma once

#include "core/history/notebook.h"

#include <optional>
#include <vector>

namespace piolo::practice {

/// What of the log is wanted. An empty member lets everything through.
struct LogFilter {
    Id piece;   ///< of passages that belong to it
    Id passage; ///< one passage only
    std::optional<Entry::Kind> kind;
    bool runThroughsOnly = false;
    std::optional<Date> from; ///< first day, itself included
    bool operator==(const LogFilter&) const = default;

    /// Whether an entry of that kind is let through.
    [[nodiscard]] bool takes(Entry::Kind wanted) const noexcept {
        return !runThroughsOnly && (!kind || *kind == wanted);
    }
    /// Run-throughs are of a piece whole, and of no kind of run.
    [[nodiscard]] bool takesRunThroughs() const noexcept { return passage.isNone() && !kind; }
};

/// Entries first … first + count - 1 of a passage's record; those of other kinds than the filter's stand
/// among them.
struct LogSpan {
    Id passage;
    std::size_t first = 0;
    std::size_t count = 0;
    bool operator==(const LogSpan&) const = default;
};

/// A run-through of a piece, by its place among them.
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

/// The days on which something stands that the filter lets through, newest first; removed passages and pieces
/// too. One pass over the entries, without a look into any of them but at its time and kind.
[[nodiscard]] std::vector<LogDay> logDays(const Notebook& notebook, const LogFilter& filter);

} // namespace piolo::practice
