// SPDX-License-Identifier: GPL-3.0-or-later
// The cycle: count-in, run, breath, and what sounds in them. A beat at 120 BPM is 24000 samples at 48 kHz.
#include "drill_bench.h"

#include "engine/time/pulse_grid.h"

#include <doctest/doctest.h>

#include <vector>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

constexpr std::uint64_t beat = 24'000;

std::vector<std::uint64_t> times(std::initializer_list<std::uint64_t> beats) {
    std::vector<std::uint64_t> samples;
    for (const auto one : beats) samples.push_back(one * beat);
    return samples;
}

} // namespace

TEST_CASE("count-in, run with its landing note, breath, count-in: every click in its place") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(18 * beat);
    // A bar of count-in, two bars, the landing note, two silent beats, and the next count-in.
    CHECK(bench.onsets() == times({0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15, 16, 17}));
    CHECK(bench.sound[0] == 1.0F);
    CHECK(bench.sound[1 * beat] == 0.75F);
    CHECK(bench.sound[4 * beat] == 1.0F);
    CHECK(bench.sound[12 * beat] == 1.0F);
}

TEST_CASE("a run ends by itself after its landing beat, and then it is clean") {
    DrillBench bench;
    bench.start(benchPlan(Tempo::bpm(120), 2));
    bench.renderTo(14 * beat);
    REQUIRE(bench.count(Kind::runEnded) == 1);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.run == 1);
    CHECK(ended.mark == Mark::clean);
    CHECK(ended.sample == 13 * beat);
    CHECK(ended.tempo == Tempo::bpm(120));
    CHECK(ended.before == Standing{Tempo::bpm(120), 2});
    CHECK(ended.after == Standing{Tempo::bpm(120), 3});
    CHECK(ended.runsEnded == 1);
    CHECK(bench.last(Kind::runBegan).sample == 4 * beat);
}

TEST_CASE("without a landing note a run ends with its last bar") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.landing = false;
    bench.start(plan);
    bench.renderTo(15 * beat);
    CHECK(bench.onsets() == times({0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 14}));
    CHECK(bench.last(Kind::runEnded).sample == 12 * beat);
}

TEST_CASE("with no gap the landing note is the next run's first downbeat") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.countInBars = 0;
    plan.breathBeats = 0;
    bench.start(plan);
    bench.renderTo(20 * beat);
    CHECK(bench.onsets().size() == 20);
    const auto ended = bench.all(Kind::runEnded);
    REQUIRE(ended.size() == 2);
    CHECK(ended[0].sample == 8 * beat);
    CHECK(ended[1].sample == 16 * beat);
    CHECK(bench.all(Kind::runBegan)[1].sample == 8 * beat);
}

TEST_CASE("a pick-up is counted in by its bars and the beats before it") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.pickupBeats = {1, 1};
    bench.start(plan);
    bench.renderTo(17 * beat);
    const auto pulses = bench.all(Kind::pulse);
    // Four beats of a bar, three before the pick-up, the pick-up, two bars, the landing note.
    REQUIRE(pulses.size() == 17);
    CHECK(pulses[6].phase == Phase::countIn);
    CHECK(pulses[6].bar == 1);
    CHECK(pulses[6].beat == 2);
    CHECK(pulses[7].phase == Phase::run);
    CHECK(pulses[7].bar == -1);
    CHECK(pulses[7].beat == 3);
    CHECK(pulses[8].bar == 0);
    CHECK(pulses[8].beat == 0);
    CHECK(pulses[8].layer == Layer::downbeat);
    CHECK(pulses[16].bar == 2);
    CHECK(bench.last(Kind::runBegan).sample == 7 * beat);
}

TEST_CASE("a pick-up of half a beat begins between the clicks, to the sample") {
    DrillBench bench;
    auto plan = benchPlan(Tempo::bpm(137));
    plan.pickupBeats = {1, 2};
    plan.subdivision = 3;
    bench.start(plan);
    bench.renderTo(10 * beat);
    const PulseGrid halves{{}, Tempo::bpm(137), {48'000}, 2};
    const PulseGrid triplets{{}, Tempo::bpm(137), {48'000}, 3};
    CHECK(bench.last(Kind::runBegan).sample == halves.sampleOf(15));
    const auto pulses = bench.all(Kind::pulse);
    CHECK(pulses[7].sample == triplets.sampleOf(21)); // the count-in includes the beat in which it begins
    CHECK(pulses[7].phase == Phase::countIn);
    CHECK(pulses[8].sample == triplets.sampleOf(23)); // the next triplet is inside the pick-up
    CHECK(pulses[8].phase == Phase::run);
    CHECK(pulses[8].bar == -1);
}

TEST_CASE("groups and subdivisions sound at their own levels") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.beatsPerBar = 7;
    plan.groupStarts = 0b0010101; // 2+2+3
    plan.subdivision = 2;
    plan.countInBars = 0;
    bench.start(plan);
    bench.renderTo(7 * beat);
    const std::vector<Layer> expected{Layer::downbeat, Layer::beat, Layer::group, Layer::beat,
                                      Layer::group,    Layer::beat, Layer::beat};
    const auto pulses = bench.all(Kind::pulse);
    REQUIRE(pulses.size() == 14);
    for (std::size_t i = 0; i < 7; ++i) {
        CHECK(pulses[2 * i].layer == expected[i]);
        CHECK(pulses[2 * i + 1].layer == Layer::subdivision);
        CHECK(bench.sound[pulses[2 * i + 1].sample] == 0.5F);
    }
}

TEST_CASE("the landing note sounds alone, without subdivisions") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.subdivision = 4;
    bench.start(plan);
    bench.renderTo(13 * beat);
    CHECK(bench.onsets(11 * beat).size() == 5);
}

TEST_CASE("a full streak climbs, and the next count-in is in the new tempo from the exact end of the old") {
    DrillBench bench;
    bench.start(benchPlan(Tempo::bpm(137), 4));
    bench.renderUntil(Kind::runEnded);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.fullStreak);
    CHECK_FALSE(ended.secure);
    CHECK(ended.after == Standing{Tempo::bpm(139), 0});
    CHECK(bench.last(Kind::tempoMoved).after == ended.after);
    bench.renderSeconds(10);
    const PulseGrid before{{}, Tempo::bpm(137), {48'000}, 1};
    CHECK(ended.sample == before.sampleOf(13));
    const PulseGrid after{before.originAt(13), Tempo::bpm(139), {48'000}, 1};
    std::vector<std::uint64_t> expected;
    for (std::uint64_t k = 2; k < 15; ++k) expected.push_back(after.sampleOf(k));
    const auto onsets = bench.onsets(ended.sample);
    REQUIRE(onsets.size() > expected.size());
    CHECK(std::equal(expected.begin(), expected.end(), onsets.begin()));
}

TEST_CASE("a full streak at the target is secure and stays there") {
    DrillBench bench;
    bench.start(benchPlan(Tempo::bpm(160), 4));
    bench.renderUntil(Kind::runEnded);
    CHECK(bench.last(Kind::runEnded).secure);
    CHECK(bench.last(Kind::runEnded).after == Standing{Tempo::bpm(160), 0});
    CHECK(bench.count(Kind::tempoMoved) == 0);
}

TEST_CASE("an open-ended run continues until it is marked clean, and ends with the next pulse") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 0;
    bench.start(plan);
    bench.renderTo(50 * beat + 100);
    CHECK(bench.count(Kind::runEnded) == 0);
    bench.clean();
    bench.renderTo(58 * beat);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.mark == Mark::clean);
    CHECK(ended.sample == 51 * beat);
    CHECK(bench.onsets(50 * beat + 1).front() == 53 * beat); // after two beats of breath
}

TEST_CASE("an open-ended run ends missed by a miss") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 0;
    bench.start(plan);
    bench.renderTo(50 * beat + 100);
    bench.miss();
    bench.renderTo(52 * beat);
    CHECK(bench.last(Kind::runEnded).mark == Mark::missed);
}

TEST_CASE("clean does nothing in a run of a given length") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(7 * beat);
    bench.clean();
    bench.renderTo(12 * beat);
    CHECK(bench.count(Kind::runEnded) == 0);
}

TEST_CASE("stop inside a run makes it void, and sounding clicks ring out") {
    DrillBench bench;
    Mix mix;
    mix.voice = Voice::metal;
    bench.start(benchPlan());
    bench.send({.kind = Command::Kind::setMix, .mix = mix});
    bench.renderTo(5 * beat + 96);
    bench.stop();
    bench.renderTo(9 * beat);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.mark == Mark::voided);
    CHECK(ended.voidReason == VoidReason::stopped);
    CHECK(ended.after == ended.before);
    CHECK(bench.events.back().kind == Kind::stopped);
    const auto tail = bench.onsets(5 * beat + 96);
    REQUIRE(tail.size() > 1'000);          // the click that was already sounding continued
    CHECK(tail.back() < 5 * beat + 3'000); // then silence
}

TEST_CASE("stop between runs ends no run") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(2 * beat);
    bench.stop();
    bench.renderTo(6 * beat);
    CHECK(bench.count(Kind::runEnded) == 0);
    CHECK(bench.count(Kind::stopped) == 1);
    bench.stop();
    bench.renderTo(7 * beat);
    CHECK(bench.count(Kind::stopped) == 1);
}

TEST_CASE("a try is one run that does not change the standing, then silence") {
    for (const bool missed : {false, true}) {
        DrillBench bench;
        auto plan = benchPlan(Tempo::bpm(120), 4);
        plan.apart = plan.once = true;
        bench.start(plan);
        bench.renderTo(6 * beat + 10);
        if (missed) bench.miss();
        bench.renderTo(40 * beat);
        REQUIRE(bench.count(Kind::runEnded) == 1);
        const auto ended = bench.last(Kind::runEnded);
        CHECK(ended.apart);
        CHECK(ended.mark == (missed ? Mark::missed : Mark::clean));
        CHECK(ended.after == Standing{Tempo::bpm(120), 4});
        CHECK(bench.events.back().kind == Kind::stopped);
        CHECK(bench.onsets().back() == (missed ? 6 : 12) * beat);
    }
}

TEST_CASE("a press heard inside a try whose end was already rendered is its miss, and does not change the "
          "standing") {
    DrillBench bench;
    auto plan = benchPlan(Tempo::bpm(120), 4);
    plan.apart = plan.once = true;
    bench.start(plan);
    bench.renderTo(13 * beat + 4'000);
    bench.miss(12 * beat);
    bench.renderTo(14 * beat);
    const auto late = bench.last(Kind::lateMiss);
    CHECK(late.apart);
    CHECK(late.run == 1);
    CHECK(late.after == Standing{Tempo::bpm(120), 4});
    bench.miss(); // in the silence after it: no effect
    bench.renderTo(15 * beat);
    CHECK(bench.count(Kind::lateMiss) == 1);
}

TEST_CASE("without the click, only count-in and landing note sound, at the same samples") {
    DrillBench silent;
    DrillBench clicked;
    auto plan = benchPlan(Tempo::bpm(120));
    clicked.start(plan);
    plan.clickless = plan.apart = true;
    silent.start(plan);
    silent.renderTo(15 * beat);
    clicked.renderTo(15 * beat);
    auto expected = clicked.onsets();
    std::erase_if(expected, [](std::uint64_t at) { return at >= 4 * beat && at < 12 * beat; });
    CHECK(silent.onsets() == expected);
    CHECK(silent.last(Kind::runEnded).sample == clicked.last(Kind::runEnded).sample);
}

TEST_CASE("runs outside the rule continue and change nothing, and misses among them cause no pause") {
    DrillBench bench;
    auto plan = benchPlan(Tempo::bpm(120), 4);
    plan.apart = true;
    bench.start(plan);
    for (int run = 0; run < 4; ++run) {
        REQUIRE(bench.renderUntil(Kind::runBegan));
        bench.renderTo(bench.now() + 2 * beat);
        bench.miss();
    }
    REQUIRE(bench.renderUntil(Kind::runBegan));
    bench.renderTo(bench.now() + 9 * beat);
    const auto ended = bench.all(Kind::runEnded);
    REQUIRE(ended.size() == 5);
    CHECK(ended.back().mark == Mark::clean);
    for (const auto& run : ended) CHECK(run.after == Standing{Tempo::bpm(120), 4});
    CHECK(bench.count(Kind::paused) == 0);
}

TEST_CASE("a start during a drill makes its run void and starts again") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(5 * beat + 7);
    bench.start(benchPlan(Tempo::bpm(90)));
    bench.renderTo(6 * beat);
    CHECK(bench.last(Kind::runEnded).voidReason == VoidReason::stopped);
    CHECK(bench.count(Kind::started) == 2);
    CHECK(bench.onsets(5 * beat + 1).front() == 5 * beat + 7);
}

TEST_CASE("values out of range are limited to the range") {
    DrillBench bench;
    DrillPlan plan;
    plan.beatsPerBar = 0;
    plan.subdivision = -3;
    plan.pickupBeats = {9, 0};
    plan.bars = -1;
    plan.countInBars = 99;
    plan.breathBeats = -5;
    plan.rule.cleanRuns = 0;
    bench.start(plan);
    bench.renderSeconds(20);
    CHECK(bench.count(Kind::pulse) > 10);
}

TEST_CASE("the plan of a passage counts the pick-up in its own beats") {
    Passage passage;
    passage.music.meter = Meter::make(6, 8, BeatUnit::dottedQuarter).value();
    passage.music.pickup = {1, 8};
    passage.music.subdivision = 3;
    passage.tempi.rule.cleanRuns = 3;
    PracticeSettings settings;
    settings.playOn = true;
    const auto plan = planOf(passage, {Tempo::bpm(66), 2}, settings);
    CHECK(plan.beatsPerBar == 2);
    CHECK(plan.pickupBeats == Fraction{1, 3});
    CHECK(plan.rule.cleanRuns == 3);
    CHECK(plan.standing == Standing{Tempo::bpm(66), 2});
    CHECK(plan.playOn);
    CHECK_FALSE(plan.apart);
}
