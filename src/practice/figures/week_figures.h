// SPDX-License-Identifier: GPL-3.0-or-later
// What was practised this week and last week.
#pragma once

#include "core/history/practice_days.h"

#include <span>

namespace piolo::practice {

/// Plain values.
struct WeekFigures {
    std::int64_t millis = 0; ///< of everything played
    int runs = 0;            ///< clean and missed, only those that affect the rule
    int clean = 0;
};

struct TwoWeeks {
    WeekFigures present;
    WeekFigures last;
};

/// Sums of the week that `today` is in, so far, and of the seven days before it. `firstWeekday`: the day on
/// which a week begins, 1 (Monday) to 7. Days that are not among `days` count as without practice.
[[nodiscard]] TwoWeeks weeksOf(std::span<const PracticeDay> days, Date today, int firstWeekday);

} // namespace piolo::practice
