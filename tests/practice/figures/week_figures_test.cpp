// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/week_figures.h"

#include <doctest/doctest.h>

#include <vector>

using namespace piolo;
using practice::TwoWeeks;
using practice::weeksOf;

namespace {

/// A minute, three runs and two clean ones on each of the 28 days up to that one.
std::vector<PracticeDay> fourWeeks(Date today) {
    std::vector<PracticeDay> days;
    for (std::int64_t ago = 27; ago >= 0; --ago) {
        PracticeDay day{Date::fromDaysSince1970(today.daysSince1970() - ago)};
        day.millis[0] = 60'000;
        day.runs = 3;
        day.clean = 2;
        days.push_back(day);
    }
    return days;
}

} // namespace

TEST_CASE("a week begins on the locale's first day and ends today; the one before it is whole") {
    const Date sunday{2026, 3, 1};
    const auto days = fourWeeks(sunday);
    for (int first = 1; first <= 7; ++first) {
        const TwoWeeks weeks = weeksOf(days, sunday, first);
        CAPTURE(first);
        CHECK(weeks.present.runs == 3 * (first == 7 ? 1 : 8 - first));
        CHECK(weeks.present.clean == 2 * (first == 7 ? 1 : 8 - first));
        CHECK(weeks.last.runs == 21);
        CHECK(weeks.last.millis == 7 * 60'000);
    }
    const Date wednesday{2026, 3, 4};
    CHECK(weeksOf(fourWeeks(wednesday), wednesday, 1).present.runs == 9);
}

TEST_CASE("days that are not known count as without practice, and so do days after today") {
    const Date today{2026, 3, 4};
    CHECK(weeksOf({}, today, 1).present.runs == 0);
    CHECK(weeksOf({}, today, 1).last.millis == 0);
    CHECK(weeksOf(fourWeeks({2026, 3, 7}), today, 1).present.runs == 9);
}
