// SPDX-License-Identifier: GPL-3.0-or-later
// Breath places inside a run: nothing clicks, the bars stop, and the run is longer by the wait.
#include "drill_bench.h"

#include <doctest/doctest.h>

#include <vector>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

constexpr std::uint64_t beat = 24'000; // at 120 BPM and 48 kHz

/// A run of two bars that starts at beat 4, with `beats` beats of waiting before a place (bar and beat
/// counted from 0).
DrillPlan breathing(std::int32_t bar, std::int32_t inBar, std::int32_t beats) {
    auto plan = benchPlan();
    plan.breaths.places[0] = {bar, inBar, beats};
    plan.breaths.count = 1;
    return plan;
}

} // namespace

TEST_CASE("at a breath place nothing clicks, the bar count stops, and the run ends that much later") {
    DrillBench bench;
    bench.start(breathing(1, 0, 2));
    bench.renderTo(17 * beat);
    const std::vector<std::uint64_t> expected{4 * beat,  5 * beat,  6 * beat,  7 * beat, 10 * beat,
                                              11 * beat, 12 * beat, 13 * beat, 14 * beat};
    CHECK(bench.onsets(4 * beat) == expected);
    CHECK(bench.sound[10 * beat] == 1.0F);
    CHECK(bench.last(Kind::runEnded).sample == 15 * beat);
    std::vector<std::uint64_t> waited;
    for (const auto& pulse : bench.all(Kind::pulse)) {
        if (!pulse.waits) continue;
        CHECK_FALSE(pulse.sounds);
        CHECK(pulse.bar == 1);
        CHECK(pulse.beat == 0);
        waited.push_back(pulse.sample);
    }
    CHECK(waited == std::vector<std::uint64_t>{8 * beat, 9 * beat});
}

TEST_CASE("from the given tempo on there are no waits, below it there are") {
    for (const std::int32_t below : {119, 120, 121}) {
        auto plan = breathing(0, 2, 3);
        plan.breaths.below = Tempo::bpm(below);
        DrillBench bench;
        bench.start(plan);
        bench.renderTo(18 * beat);
        CHECK(bench.last(Kind::runEnded).sample == (below > 120 ? 16 : 13) * beat);
    }
}

TEST_CASE("a climb to that tempo ends the waits from the next run on") {
    auto plan = breathing(0, 2, 3);
    plan.breaths.below = Tempo::bpm(121);
    plan.rule.cleanRuns = 1;
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(40 * beat);
    const auto ended = bench.all(Kind::runEnded);
    REQUIRE(ended.size() >= 2);
    const auto began = bench.all(Kind::runBegan);
    CHECK(ended[0].sample - began[0].sample == 12 * beat);
    CHECK(ended[1].tempo == Tempo::bpm(122));
    const auto length = ended[1].sample - began[1].sample;
    CHECK(length >= 9 * 60 * 48'000 / 122);
    CHECK(length <= 9 * 60 * 48'000 / 122 + 1);
}

TEST_CASE("a miss while the run waits lies on the place before which it waits") {
    for (const bool playOn : {false, true}) {
        auto plan = breathing(1, 2, 4);
        plan.playOn = playOn;
        DrillBench bench;
        bench.start(plan);
        bench.renderTo(12 * beat + 300);
        bench.miss();
        bench.renderTo(30 * beat);
        const auto ended = bench.all(Kind::runEnded).front();
        CHECK(ended.mark == Mark::missed);
        CHECK(ended.bar == 1);
        CHECK(ended.beat == 2);
        CHECK(ended.sample == (playOn ? 17 : 13) * beat);
        if (playOn) CHECK(bench.last(Kind::missMarked).bar == 1);
    }
}

TEST_CASE("a press heard while the run waited belongs to it, even if the next count-in is already rendered") {
    auto plan = breathing(1, 3, 2);
    plan.landing = false;
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(15 * beat);
    bench.miss(12 * beat + 10);
    bench.renderTo(16 * beat);
    REQUIRE(bench.count(Kind::lateMiss) == 1);
    CHECK(bench.last(Kind::lateMiss).bar == 1);
    CHECK(bench.last(Kind::lateMiss).beat == 3);
}

TEST_CASE("a run may wait before the landing note, but not before its first note or after its end") {
    const auto lengthOf = [](DrillPlan plan) {
        DrillBench bench;
        bench.start(plan);
        bench.renderTo(24 * beat);
        const auto ended = bench.all(Kind::runEnded).front();
        return (ended.sample - bench.all(Kind::runBegan).front().sample) / beat;
    };
    CHECK(lengthOf(breathing(2, 0, 3)) == 12);
    CHECK(lengthOf(breathing(0, 0, 3)) == 9);
    CHECK(lengthOf(breathing(2, 1, 3)) == 9);
    CHECK(lengthOf(breathing(0, 4, 3)) == 9); // the bar has no such beat
    auto noLanding = breathing(2, 0, 3);
    noLanding.landing = false;
    CHECK(lengthOf(noLanding) == 8);
}

TEST_CASE("a place in the pick-up's bar waits after the first note of the pick-up") {
    auto plan = breathing(-1, 3, 1);
    plan.pickupBeats = {2, 1};
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(20 * beat);
    // Six beats of count-in, the first beat of the pick-up, the wait, its second beat, bar 1.
    CHECK(bench.last(Kind::runBegan).sample == 6 * beat);
    const auto onsets = bench.onsets(6 * beat);
    CHECK(onsets[0] == 6 * beat);
    CHECK(onsets[1] == 8 * beat);
    CHECK(bench.sound[9 * beat] == 1.0F);
    plan.breaths.places[0].beat = 2; // the first note of the run
    DrillBench first;
    first.start(plan);
    first.renderTo(20 * beat);
    CHECK(first.onsets(6 * beat)[1] == 7 * beat);
}

TEST_CASE("after a loss of sound the count-in comes where the next bar begins, after the wait") {
    DrillBench bench;
    bench.start(breathing(1, 0, 2));
    bench.renderTo(6 * beat + 10);
    bench.engine.setHeard(false);
    bench.engine.setHeard(true);
    bench.renderTo(15 * beat);
    CHECK(bench.last(Kind::runEnded).sample == 6 * beat + 10);
    CHECK(bench.last(Kind::runEnded).mark == Mark::voided);
    CHECK(bench.last(Kind::runBegan).sample == 14 * beat); // one bar from where bar 1 begins
}

TEST_CASE("an open-ended run also waits, then continues") {
    auto plan = breathing(1, 1, 2);
    plan.bars = 0;
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(13 * beat);
    const std::vector<std::uint64_t> expected{4 * beat, 5 * beat,  6 * beat, 7 * beat,
                                              8 * beat, 11 * beat, 12 * beat};
    CHECK(bench.onsets(4 * beat) == expected);
}
