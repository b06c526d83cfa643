// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/day_shares.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::practice;

namespace {

constexpr std::int64_t minute = 60'000;
const Date today = Date::fromDaysSince1970(20'000);

/// Days up to today, each with that many minutes of runs.
std::vector<PracticeDay> daysOf(const std::vector<std::int64_t>& minutes) {
    std::vector<PracticeDay> days;
    const auto first = today.daysSince1970() - static_cast<std::int64_t>(minutes.size()) + 1;
    for (std::size_t i = 0; i < minutes.size(); ++i) {
        PracticeDay day;
        day.date = Date::fromDaysSince1970(first + static_cast<std::int64_t>(i));
        day.practised = minutes[i] > 0;
        day.millis[static_cast<std::size_t>(PracticeKind::run)] = minutes[i] * minute;
        days.push_back(day);
    }
    return days;
}

GapFigures gapsOf(const std::vector<std::int64_t>& minutes) {
    const auto days = daysOf(minutes);
    return gapFiguresOf(days, missedDays(days, today));
}

using Kind = GapFigures::Kind;

} // namespace

TEST_CASE("the longest day is the measure of all, and a day that is missed is marked") {
    const auto days = daysOf({10, 0, 0, 40, 20});
    const auto shares = sharesOf(days, missedDays(days, today));
    CHECK(mostMinutes(days) == 40);
    REQUIRE(shares.size() == 5);
    CHECK(shares[3].runs == doctest::Approx(1));
    CHECK(shares[0].runs == doctest::Approx(0.25));
    CHECK(shares[1].missed);
    CHECK(shares[1].longGap);
    CHECK_FALSE(shares[3].missed);
    CHECK(mostMinutes(daysOf({0, 0})) == 0);
}

TEST_CASE("what there is to say of missed days") {
    CHECK(gapsOf({0, 0, 0}).kind == Kind::nothingPlayed);
    CHECK(gapsOf({5, 5, 5}).kind == Kind::noneAtAll);
    CHECK(gapsOf({0, 5, 5}).kind == Kind::noneSinceFirst);
    CHECK(gapsOf({5, 0, 5}).kind == Kind::single);
    const GapFigures closed = gapsOf({5, 0, 0, 5});
    CHECK(closed.kind == Kind::longGap);
    CHECK(closed.gap->days == 2);
    CHECK_FALSE(closed.open);
    CHECK(gapsOf({5, 0, 0, 0}).open); // today can still end it
}
