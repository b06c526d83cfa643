// SPDX-License-Identifier: GPL-3.0-or-later
#include "../scribe.h"
#include "core/history/practice_days.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

std::vector<PracticeDay> week(std::initializer_list<int> practised) {
    std::vector<PracticeDay> days;
    for (std::int64_t day = 0; day < 10; ++day) days.push_back({Date::fromDaysSince1970(20'513 + day)});
    for (const int day : practised) days[static_cast<std::size_t>(day)].practised = true;
    return days;
}

Date dayOf(int index) { return Date::fromDaysSince1970(20'513 + index); }

} // namespace

TEST_CASE("a day's minutes are split by kind, and its clean share counts the runs that affect the rule") {
    Scribe scribe;
    scribe.clean(2);
    scribe.miss();
    scribe.run(80, Mark::voided);
    scribe.tryOnce(96, Mark::missed);
    scribe.apart(RunKind::silent, 96, Mark::clean);
    scribe.tempo(70);
    scribe.turnTo("2026-03-03");
    scribe.apart(RunKind::aside, 48, Mark::clean);
    scribe.add(PieceFact{Id{5, 5}, "Harbour Suite", {}, {}});
    scribe.add(RunThroughFact{Id{5, 5}, {}, 300'000, true, {}});
    const auto days = practiceDays(scribe.notebook(), day("2026-03-01"), day("2026-03-03"));
    REQUIRE(days.size() == 3);
    CHECK(days[0].of(PracticeKind::run) == 40'000);
    CHECK(days[0].of(PracticeKind::attempt) == 10'000);
    CHECK(days[0].of(PracticeKind::silent) == 10'000);
    CHECK(days[0].totalMillis() == 60'000);
    CHECK(days[0].runs == 3);
    CHECK(days[0].clean == 2);
    CHECK_FALSE(days[1].practised);
    CHECK(days[1].totalMillis() == 0);
    CHECK(days[2].of(PracticeKind::aside) == 10'000);
    CHECK(days[2].of(PracticeKind::runThrough) == 300'000);
    CHECK(days[2].runs == 0);
    CHECK(practiceDays(scribe.notebook(), day("2026-03-02"), day("2026-03-02")).size() == 1);
    CHECK(practiceDays(scribe.notebook(), day("2026-03-02"), day("2026-03-01")).empty());
}

TEST_CASE("runs of a removed passage still count; a tempo change alone does not") {
    Scribe scribe;
    scribe.clean();
    scribe.turnTo("2026-03-02");
    scribe.tempo(70);
    scribe.add(RemovalFact{scribe.passage, true});
    const auto days = practiceDays(scribe.notebook(), day("2026-03-01"), day("2026-03-02"));
    CHECK(days[0].practised);
    CHECK(days[0].totalMillis() == 10'000);
    CHECK_FALSE(days[1].practised);
}

TEST_CASE(
    "gaps between days with practice are reported with their length; days before the first are not gaps") {
    CHECK(missedDays(week({2, 3, 5, 9}), dayOf(9)) == std::vector<MissedDays>{{dayOf(4), 1}, {dayOf(6), 3}});
    CHECK(missedDays(week({0, 1, 2}), dayOf(2)).empty());
    CHECK(missedDays(week({}), dayOf(9)).empty());
}

TEST_CASE("today is not missed before it is over") {
    CHECK(missedDays(week({3}), dayOf(4)).empty());
    CHECK(missedDays(week({3}), dayOf(5)) == std::vector<MissedDays>{{dayOf(4), 1}});
    CHECK(missedDays(week({3}), dayOf(6)) == std::vector<MissedDays>{{dayOf(4), 2}});
    CHECK(missedDays(week({3, 6}), dayOf(6)) == std::vector<MissedDays>{{dayOf(4), 2}});
}
