// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/log_index.h"

#include <algorithm>

namespace piolo::practice {

namespace {

struct DatedSpan {
    std::int64_t day = 0; ///< since 1970, local
    LogSpan span;         ///< without a passage: a run-through
    LogThrough through{};
};

/// Without calendar arithmetic, because this runs for every entry.
std::int64_t localDay(Timestamp at) {
    constexpr std::int64_t minute = 60'000;
    constexpr std::int64_t day = 86'400'000;
    const std::int64_t local = at.utcMillis + at.offsetMinutes * minute;
    return local / day - (local % day < 0 ? 1 : 0);
}

bool inRange(std::int64_t day, const LogFilter& filter) {
    return !filter.from || day >= filter.from->daysSince1970();
}

bool wanted(const PassageRecord& record, const LogFilter& filter) {
    return filter.piece.isNone() || record.passage.title.piece == filter.piece;
}

void addSpans(const PassageRecord& record, const LogFilter& filter, std::vector<DatedSpan>& spans) {
    bool open = false;
    std::int64_t day = 0;
    for (std::size_t index = 0; index < record.entries.size(); ++index) {
        const Entry& entry = record.entries[index];
        const std::int64_t its = localDay(entry.at);
        if (open && its != day) open = false;
        if (!filter.takes(entry.kind)) continue;
        if (!open && !inRange(its, filter)) continue;
        if (!open) spans.push_back({its, {record.passage.id, index, 0}, {}});
        open = true;
        day = its;
        spans.back().span.count = index + 1 - spans.back().span.first;
    }
}

void addThroughs(const Notebook& notebook, const LogFilter& filter, std::vector<DatedSpan>& spans) {
    for (const Piece& piece : notebook.pieces(true)) {
        if (!filter.piece.isNone() && piece.id != filter.piece) continue;
        const auto throughs = notebook.runThroughs(piece.id);
        for (std::size_t index = 0; index < throughs.size(); ++index) {
            const std::int64_t day = localDay(throughs[index].at);
            if (inRange(day, filter)) spans.push_back({day, {}, {piece.id, index}});
        }
    }
}

} // namespace

std::vector<LogDay> logDays(const Notebook& notebook, const LogFilter& filter) {
    std::vector<DatedSpan> spans;
    const auto ids = filter.passage.isNone() ? notebook.passages(true) : std::vector<Id>{filter.passage};
    for (const Id id : ids) {
        const PassageRecord* const record = notebook.passage(id);
        if (record != nullptr && wanted(*record, filter)) addSpans(*record, filter, spans);
    }
    if (filter.takesRunThroughs()) addThroughs(notebook, filter, spans);
    std::stable_sort(spans.begin(), spans.end(),
                     [](const DatedSpan& a, const DatedSpan& b) { return a.day > b.day; });
    std::vector<LogDay> days;
    for (const DatedSpan& dated : spans) {
        const Date date = Date::fromDaysSince1970(dated.day);
        if (days.empty() || days.back().date != date) days.push_back({date, {}, {}});
        if (dated.span.passage.isNone())
            days.back().throughs.push_back(dated.through);
        else
            days.back().spans.push_back(dated.span);
    }
    return days;
}

} // namespace piolo::practice
