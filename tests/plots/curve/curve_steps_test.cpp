// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_steps.h"

#include "../records.h"
#include "plots/curve/curve_scale.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::plots;

namespace {
const CurveView twoWeeks{{2026, 4, 18}, 14};
const CurveView always{{2026, 4, 18}, 0};
} // namespace

TEST_CASE("each run is one step at the tempo it was played at") {
    PassageRecord record = freshRecord();
    play(record, 18, "ccccm");
    const CurveSteps steps = stepsOf(record, twoWeeks);
    REQUIRE(steps.steps.size() == 5);
    CHECK(steps.steps[0].bpm == 60);
    CHECK(steps.steps[2].bpm == 62);
    CHECK(steps.steps[4].bpm == 64);
    CHECK(steps.steps[4].mark == StepMark::miss);
    CHECK(steps.steps[3].mark == StepMark::none);
    CHECK(steps.last == 60);
    CHECK(steps.target == 96);
}

TEST_CASE("a void run adds no step, a try adds a step without moving the line") {
    PassageRecord record = freshRecord();
    play(record, 18, "cvtu");
    const CurveSteps steps = stepsOf(record, twoWeeks);
    REQUIRE(steps.steps.size() == 3);
    CHECK(steps.steps[1].mark == StepMark::cleanTry);
    CHECK(steps.steps[1].bpm == 60);
    CHECK(steps.steps[1].markBpm == 96);
    CHECK(steps.steps[2].mark == StepMark::missedTry);
}

TEST_CASE("the view holds its days, today included, and nothing later") {
    PassageRecord record = freshRecord();
    play(record, 4, "c");
    play(record, 5, "cc");
    play(record, 18, "c");
    play(record, 19, "c");
    const CurveSteps steps = stepsOf(record, twoWeeks);
    REQUIRE(steps.days.size() == 2);
    CHECK(steps.days[0].date == Date{2026, 4, 5});
    CHECK(steps.days[0].count == 2);
    CHECK(steps.days[1].first == 2);
    CHECK(stepsOf(record, always).days.size() == 4);
}

TEST_CASE("a passage not played of late shows its last days, also when a run today did not count") {
    PassageRecord record = freshRecord();
    play(record, 4, "ccc");
    const Date later{2026, 5, 30};
    CHECK(stepsOf(record, viewWithSteps(record, later, 14)).steps.size() == 3);
    play(record, 29, "v"); // not drawn
    const Date today{2026, 4, 29};
    CHECK(stepsOf(record, {today, 14}).steps.empty());
    CHECK(stepsOf(record, viewWithSteps(record, today, 14)).steps.size() == 3);
    play(record, 29, "c");
    CHECK(stepsOf(record, viewWithSteps(record, today, 14)).steps.size() == 1);
    CHECK(viewWithSteps(freshRecord(), today, 14).today == today);
}

TEST_CASE("a manual tempo change shows in the run after it, and at the end of the line") {
    PassageRecord record = freshRecord();
    play(record, 18, "c");
    set(record, 18, Tempo::bpm(72));
    CHECK(stepsOf(record, twoWeeks).steps.size() == 1);
    CHECK(stepsOf(record, twoWeeks).last == 72);
    play(record, 18, "c");
    CHECK(stepsOf(record, twoWeeks).steps[1].bpm == 72);
}

TEST_CASE("the axis covers all tempi and the target, with round numbers, few enough to read") {
    PassageRecord record = freshRecord();
    for (int most = 2; most <= 7; ++most) {
        for (const int target : {40, 61, 96, 160, 400}) {
            CAPTURE(most);
            CAPTURE(target);
            CurveSteps steps = stepsOf(record, always);
            steps.steps = {{67.5, StepMark::none, 67.5}, {72.25, StepMark::miss, 72.25}};
            steps.last = 68.25;
            steps.target = target;
            const CurveScale scale = scaleOf(steps, most);
            CHECK(scale.low <= 67.5);
            CHECK(scale.low <= target);
            CHECK(scale.high >= 72.25);
            CHECK(scale.high >= target);
            CHECK(scale.high - scale.low >= 10);
            CHECK(scale.ticks.size() >= 1);
            CHECK(scale.ticks.size() <= static_cast<std::size_t>(most));
            for (const double tick : scale.ticks) CHECK(tick == static_cast<int>(tick));
        }
    }
}
