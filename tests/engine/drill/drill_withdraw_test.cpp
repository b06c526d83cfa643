// SPDX-License-Identifier: GPL-3.0-or-later
#include "drill_bench.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

// benchPlan at 120 BPM: a count-in of 4 beats, then a run of 8.
constexpr std::uint64_t beat = 24'000;

DrillPlan playingOn() {
    auto plan = benchPlan(Tempo::bpm(120), 3);
    plan.playOn = true;
    return plan;
}

} // namespace

TEST_CASE("the effect of a press is reported with its number") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(5 * beat + 100);
    bench.press(7);
    bench.renderSeconds(0.01);
    CHECK(bench.last(Kind::runEnded).press == 7);
    REQUIRE(bench.renderUntil(Kind::runEnded));
    CHECK(bench.last(Kind::runEnded).mark == Mark::clean);
    CHECK(bench.last(Kind::runEnded).press == 0);
    bench.press(8); // in the breath
    bench.renderSeconds(0.01);
    REQUIRE(bench.count(Kind::lateMiss) == 1);
    CHECK(bench.last(Kind::lateMiss).press == 8);
}

TEST_CASE("every withdrawal is answered, after what its press made, also when that was nothing") {
    DrillBench bench;
    bench.withdraw(1);
    bench.renderSeconds(0.01);
    REQUIRE(bench.count(Kind::withdrawn) == 1);
    bench.start(benchPlan());
    bench.renderTo(2 * beat); // in the count-in
    bench.press(2);
    bench.withdraw(2);
    bench.renderTo(6 * beat);
    CHECK(bench.last(Kind::withdrawn).press == 2);
    bench.press(3);
    bench.withdraw(3);
    bench.renderSeconds(0.01);
    REQUIRE(bench.count(Kind::withdrawn) == 3);
    std::vector<Kind> order;
    for (const auto& event : bench.events)
        if (event.press == 3) order.push_back(event.kind);
    CHECK(order == std::vector{Kind::runEnded, Kind::withdrawn});
}

TEST_CASE("when playing on, a withdrawn press leaves the run clean") {
    DrillBench bench;
    bench.start(playingOn());
    bench.renderTo(5 * beat + 100);
    bench.press(1);
    bench.renderSeconds(0.1);
    REQUIRE(bench.count(Kind::missMarked) == 1);
    bench.withdraw(1);
    const auto ended = bench.renderUntil(Kind::runEnded);
    REQUIRE(ended);
    CHECK(bench.last(Kind::withdrawn).run == ended->run);
    CHECK(ended->mark == Mark::clean);
    CHECK(ended->after == Standing{Tempo::bpm(120), 4});
}

TEST_CASE("when playing on, earlier presses than the withdrawn one still count") {
    DrillBench bench;
    bench.start(playingOn());
    bench.renderTo(5 * beat + 100);
    bench.press(1);
    bench.renderTo(7 * beat + 100);
    bench.press(2);
    bench.renderSeconds(0.1);
    SUBCASE("the newest is withdrawn") { bench.withdraw(2); }
    SUBCASE("an older one is not: the newest press is another") { bench.withdraw(1); }
    const auto ended = bench.renderUntil(Kind::runEnded);
    REQUIRE(ended);
    CHECK(ended->mark == Mark::missed);
    CHECK(ended->press == 1);
}

TEST_CASE("when playing on without a gap, a withdrawn press leaves the next run where it was") {
    auto plan = playingOn();
    plan.countInBars = 0;
    plan.breathBeats = 0;
    DrillBench plain;
    plain.start(plan);
    plain.renderTo(20 * beat);
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(2 * beat + 100);
    bench.press(1);
    bench.renderSeconds(0.1);
    bench.withdraw(1);
    bench.renderTo(20 * beat);
    CHECK(bench.onsets() == plain.onsets());
}

TEST_CASE("a pause caused by a withdrawn press ends; any other pause stays") {
    DrillBench bench;
    auto plan = benchPlan();
    bench.start(plan);
    for (std::uint64_t number = 1; number <= 3; ++number) {
        REQUIRE(bench.renderUntil(Kind::runBegan));
        bench.renderSeconds(0.2);
        bench.press(number);
        bench.renderSeconds(0.1);
    }
    REQUIRE(bench.count(Kind::paused) == 1); // three misses without a clean run
    SUBCASE("its own") {
        bench.withdraw(3);
        bench.renderSeconds(0.1);
        CHECK(bench.count(Kind::resumed) == 1);
        CHECK(bench.renderUntil(Kind::runBegan));
    }
    SUBCASE("another's") {
        bench.withdraw(2);
        bench.renderSeconds(0.1);
        CHECK(bench.count(Kind::resumed) == 0);
    }
}
