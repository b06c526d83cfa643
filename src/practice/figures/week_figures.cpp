// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/week_figures.h"

namespace piolo::practice {

namespace {

constexpr std::int64_t week = 7;

/// How many days ago a week began that begins on that weekday; 1970-01-01 was a Thursday.
std::int64_t daysSinceItBegan(std::int64_t day, int firstWeekday) {
    constexpr std::int64_t thursday = 4;
    return ((day + thursday - firstWeekday) % week + week) % week;
}

void add(WeekFigures& figures, const PracticeDay& day) {
    figures.millis += day.totalMillis();
    figures.runs += day.runs;
    figures.clean += day.clean;
}

} // namespace

TwoWeeks weeksOf(std::span<const PracticeDay> days, Date today, int firstWeekday) {
    const std::int64_t present = today.daysSince1970();
    const std::int64_t began = present - daysSinceItBegan(present, firstWeekday);
    TwoWeeks weeks;
    for (const PracticeDay& day : days) {
        const std::int64_t its = day.date.daysSince1970();
        if (its >= began && its <= present) add(weeks.present, day);
        if (its >= began - week && its < began) add(weeks.last, day);
    }
    return weeks;
}

} // namespace piolo::practice
