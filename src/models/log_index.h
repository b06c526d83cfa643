// SPDX-License-Identifier: GPL-3.0-or-later
// Which entries stand on which day: the index by which the log is read a day at a time.
#pragma once

#include "core/notebook.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// What of the log is wanted. An empty member lets everything through.
struct LogFilter {
    Id piece;   ///< of passages that belong to it
    Id passage; ///< one passage only
    std::optional<Entry::Kind> kind;
    std::optional<Date> from; ///< first day, itself included
    std::optional<Date> to;   ///< last day, itself included
    bool operator==(const LogFilter&) const = default;

    /// Whether an entry of that kind is let through.
    [[nodiscard]] bool takes(Entry::Kind wanted) const noexcept { return !kind || *kind == wanted; }
};

/// Entries first … first + count - 1 of a passage's record; those of other kinds than the filter's stand
/// among them.
struct LogSpan {
    Id passage;
    std::size_t first = 0;
    std::size_t count = 0;
    bool operator==(const LogSpan&) const = default;
};

struct LogDay {
    Date date;
    std::vector<LogSpan> spans;
    bool operator==(const LogDay&) const = default;
};

/// The days on which something stands that the filter lets through, newest first; removed passages too. One
/// pass over the entries, without a look into any of them but at its time and kind.
[[nodiscard]] std::vector<LogDay> logDays(const Notebook& notebook, const LogFilter& filter);

} // namespace piolo::models
