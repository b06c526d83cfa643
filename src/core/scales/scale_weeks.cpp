// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_weeks.h"

namespace piolo {

namespace {

constexpr std::int64_t daysOfWeek = 7;

} // namespace

Date mondayOf(Date date) noexcept {
    constexpr std::int64_t daysFromMonday = 3; // 1 January 1970 was a Thursday
    const std::int64_t days = date.daysSince1970();
    const std::int64_t since = ((days + daysFromMonday) % daysOfWeek + daysOfWeek) % daysOfWeek;
    return Date::fromDaysSince1970(days - since);
}

std::vector<ScaleWeek> scaleWeeks(const Notebook& notebook, std::string_view instrument, Date today,
                                  int weeks) {
    std::vector<ScaleWeek> found;
    const std::int64_t last = mondayOf(today).daysSince1970();
    for (int back = weeks - 1; back >= 0; --back)
        found.push_back({Date::fromDaysSince1970(last - back * daysOfWeek), {}});
    const std::int64_t first = last - (weeks - 1) * daysOfWeek;
    for (const Id id : notebook.passages(true)) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr || !record->passage.scale) continue;
        if (record->passage.scale->instrument != instrument) continue;
        const auto key = static_cast<std::size_t>(pitchClass(record->passage.scale->tonic));
        for (const Entry& entry : record->entries) {
            if (entry.kind == Entry::Kind::tempo || entry.mark == Mark::voided) continue;
            const std::int64_t week = entry.at.date().daysSince1970() - first;
            if (week < 0 || week >= weeks * daysOfWeek) continue;
            ++found.at(static_cast<std::size_t>(week / daysOfWeek)).runs.at(key);
        }
    }
    return found;
}

} // namespace piolo
