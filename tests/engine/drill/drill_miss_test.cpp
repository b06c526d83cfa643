// SPDX-License-Identifier: GPL-3.0-or-later
// Misses: early, late and playing on. A beat at 120 BPM is 24000 samples at 48 kHz.
#include "drill_bench.h"

#include "engine/drill/drill_measure.h"
#include "engine/time/pulse_grid.h"

#include <doctest/doctest.h>

#include <vector>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

constexpr std::uint64_t beat = 24'000;
constexpr std::uint64_t runEnd = 13 * beat; // of the first run of benchPlan()

/// 84 BPM with four clean runs in a row and a rule of five: the next clean run climbs.
DrillPlan fourOfFive() { return benchPlan(Tempo::bpm(84), 4); }

std::uint64_t sampleAt84(std::uint64_t k) { return PulseGrid{{}, Tempo::bpm(84), {48'000}, 1}.sampleOf(k); }

} // namespace

TEST_CASE("a miss ends the run: the next pulse not yet rendered begins what follows, at the lower tempo") {
    DrillBench bench;
    bench.start(benchPlan(Tempo::bpm(120), 3));
    bench.renderTo(6 * beat + 5'000);
    bench.miss();
    bench.renderTo(20 * beat);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.mark == Mark::missed);
    CHECK(ended.sample == 7 * beat);
    CHECK(ended.after == Standing{Tempo::bpm(116), 0});
    CHECK(ended.bar == 0);
    CHECK(ended.beat == 2);
    // 4 s at 116 are 1.93 bars: two bars, the second of them the count-in.
    const PulseGrid after{{7 * beat, 0}, Tempo::bpm(116), {48'000}, 1};
    const auto onsets = bench.onsets(6 * beat + 1);
    for (std::uint64_t k = 0; k < 6; ++k) CHECK(onsets[k] == after.sampleOf(k + 4));
    CHECK(bench.last(Kind::runBegan).sample == after.sampleOf(8));
}

TEST_CASE("a miss in a subdivided run waits for the next subdivision only") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.subdivision = 4;
    bench.start(plan);
    bench.renderTo(6 * beat + 5'000);
    bench.miss();
    bench.renderTo(7 * beat);
    CHECK(bench.last(Kind::runEnded).sample == 6 * beat + 6'000);
    CHECK(bench.onsets(6 * beat + 1).empty());
}

TEST_CASE("a pulse due at the next sample is the first beat of what follows, and is not heard") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(6 * beat);
    bench.miss();
    bench.renderTo(7 * beat + 1);
    CHECK(bench.last(Kind::runEnded).sample == 6 * beat);
    CHECK(bench.onsets().back() == 5 * beat);
}

TEST_CASE("between a miss and the next first note lie at least four seconds, in whole bars") {
    for (const int bpm : {40, 84, 120, 200, 400})
        for (const int beats : {2, 3, 4, 7})
            for (const int countIn : {0, 1, 4}) {
                auto plan = benchPlan();
                plan.beatsPerBar = beats;
                plan.countInBars = countIn;
                const auto bars = static_cast<double>(gapBarsAfterMiss(plan, Tempo::bpm(bpm)));
                const double bar = 60.0 * beats / bpm;
                const double breathAndCountIn = (plan.breathBeats + countIn * beats) * 60.0 / bpm;
                const double needed = std::max(4.0, breathAndCountIn);
                CHECK(bars * bar >= needed - 1e-9);
                CHECK(bars >= countIn);
                CHECK(((bars - 1) * bar < needed - 1e-9 || bars - 1 < countIn));
            }
}

TEST_CASE("without any gap, a miss still begins the next run with the next pulse") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.countInBars = 0;
    plan.breathBeats = 0;
    plan.gapMillisAfterMiss = 0;
    bench.start(plan);
    bench.renderTo(2 * beat + 5);
    bench.miss();
    bench.renderTo(4 * beat);
    const auto began = bench.last(Kind::runBegan);
    CHECK(began.sample == 3 * beat);
    CHECK(began.tempo == Tempo::bpm(116));
    // Pressing the key again in its first beat belongs to the missed run and has no effect.
    bench.miss(3 * beat + 100);
    bench.renderTo(4 * beat + 10);
    CHECK(bench.count(Kind::runEnded) == 1);
}

TEST_CASE("a second press for the same miss does nothing") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(6 * beat + 5'000);
    bench.miss();
    bench.miss();
    bench.renderTo(8 * beat);
    bench.miss();
    bench.renderTo(12 * beat);
    CHECK(bench.count(Kind::runEnded) == 1);
    CHECK(bench.count(Kind::lateMiss) == 0);
}

TEST_CASE("a press before the first run does nothing") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(2 * beat);
    bench.miss();
    bench.renderTo(5 * beat);
    bench.miss(3 * beat); // heard during the count-in, although the run is already being rendered
    bench.renderTo(6 * beat);
    CHECK(bench.count(Kind::runEnded) == 0);
}

TEST_CASE("84 with four of five, missed late, goes to 80 and not to 82") {
    DrillBench bench;
    bench.start(fourOfFive());
    bench.renderTo(sampleAt84(13) + 9'000);
    REQUIRE(bench.count(Kind::runEnded) == 1);
    CHECK(bench.last(Kind::runEnded).after == Standing{Tempo::bpm(86), 0});
    bench.miss();
    bench.renderSeconds(0.1);
    const auto late = bench.last(Kind::lateMiss);
    CHECK(late.run == 1);
    CHECK(late.before == Standing{Tempo::bpm(84), 4});
    CHECK(late.after == Standing{Tempo::bpm(80), 0});
    CHECK(late.runsEnded == 2);
    const auto again = bench.renderUntil(Kind::pulse);
    REQUIRE(again);
    CHECK(again->phase == Phase::countIn);
    CHECK(again->tempo == Tempo::bpm(80));
    bench.renderUntil(Kind::runBegan);
    CHECK(bench.last(Kind::runBegan).tempo == Tempo::bpm(80));
}

TEST_CASE("a late miss in the count-in restarts the count-in with the next pulse of the old grid") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(16 * beat + 100); // the second beat of the count-in
    bench.miss();
    bench.renderTo(30 * beat);
    CHECK(bench.last(Kind::lateMiss).after == Standing{Tempo::bpm(116), 0});
    const PulseGrid after{{17 * beat, 0}, Tempo::bpm(116), {48'000}, 1};
    CHECK(bench.onsets(16 * beat + 1).front() == after.sampleOf(4));
    CHECK(bench.last(Kind::runBegan).sample == after.sampleOf(8));
}

TEST_CASE("a second late press for the same run does nothing") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(runEnd + 100);
    bench.miss();
    bench.renderSeconds(0.2);
    bench.miss();
    bench.renderSeconds(0.2);
    CHECK(bench.count(Kind::lateMiss) == 1);
}

TEST_CASE("a press heard inside a run whose end was already rendered is a miss of that run, with its place") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(runEnd + 4'000);
    bench.miss(11 * beat + 300); // heard during the last beat of the second bar
    bench.renderSeconds(0.1);
    const auto late = bench.last(Kind::lateMiss);
    CHECK(late.run == 1);
    CHECK(late.bar == 1);
    CHECK(late.beat == 3);
}

TEST_CASE("a run rendered but not heard is overtaken by a late miss: it never was") {
    DrillBench bench;
    bench.start(benchPlan());
    const auto second = 19 * beat;
    bench.renderTo(second + 7'000);
    REQUIRE(bench.count(Kind::runBegan) == 2);
    bench.miss(second - 1);
    bench.renderSeconds(8);
    CHECK(bench.last(Kind::lateMiss).run == 1);
    CHECK(bench.last(Kind::runBegan).run == 3);
    for (const auto& ended : bench.all(Kind::runEnded)) CHECK(ended.run != 2);
    CHECK(bench.last(Kind::runBegan).tempo == Tempo::bpm(116));
}

TEST_CASE("a press heard from the next run's first note on is its own miss") {
    DrillBench bench;
    bench.start(benchPlan());
    const auto second = 19 * beat;
    bench.renderTo(second + 7'000);
    bench.miss(second);
    bench.renderSeconds(1);
    CHECK(bench.count(Kind::lateMiss) == 0);
    CHECK(bench.last(Kind::runEnded).run == 2);
    CHECK(bench.last(Kind::runEnded).mark == Mark::missed);
}

TEST_CASE("with no gap a press before the first beat's end belongs to the run before") {
    auto plan = benchPlan();
    plan.countInBars = 0;
    plan.breathBeats = 0;
    DrillBench early;
    early.start(plan);
    early.renderTo(9 * beat + 500);
    early.miss(9 * beat - 1);
    early.renderSeconds(0.1);
    CHECK(early.last(Kind::lateMiss).run == 1);
    CHECK(early.last(Kind::runBegan).run == 2);
    CHECK(early.last(Kind::runEnded).run == 1);
    DrillBench later;
    later.start(plan);
    later.renderTo(9 * beat + 500);
    later.miss(9 * beat);
    later.renderSeconds(0.1);
    CHECK(later.count(Kind::lateMiss) == 0);
    CHECK(later.last(Kind::runEnded).run == 2);
}

TEST_CASE("a late miss two runs back counts the run between after it") {
    DrillBench bench;
    auto plan = benchPlan(Tempo::bpm(400), 0);
    plan.rule.target = Tempo::bpm(400);
    plan.beatsPerBar = 1;
    plan.bars = 1;
    plan.countInBars = 0;
    plan.breathBeats = 0;
    bench.start(plan);
    bench.renderTo(7'200 * 3 + 100); // runs 1 to 3 have ended, each one beat long
    REQUIRE(bench.count(Kind::runEnded) == 3);
    bench.miss(7'200 * 2 + 50); // the first beat of run 3 belongs to run 2
    bench.renderSeconds(0.01);
    const auto late = bench.last(Kind::lateMiss);
    CHECK(late.run == 2);
    // Run 2 missed: 396. Run 3 was played at 400: 400 with one clean.
    CHECK(late.after == Standing{Tempo::bpm(400), 1});
}

TEST_CASE("playing on, each press is recorded with its place and the run drops once, at its end") {
    DrillBench bench;
    auto plan = benchPlan(Tempo::bpm(120), 3);
    plan.playOn = true;
    bench.start(plan);
    bench.renderTo(5 * beat + 100);
    bench.miss();
    bench.renderTo(10 * beat + 100);
    bench.miss();
    bench.renderTo(runEnd + 100);
    const auto marks = bench.all(Kind::missMarked);
    REQUIRE(marks.size() == 2);
    CHECK(marks[0].bar == 0);
    CHECK(marks[0].beat == 1);
    CHECK(marks[1].bar == 1);
    CHECK(marks[1].beat == 2);
    REQUIRE(bench.count(Kind::runEnded) == 1);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.mark == Mark::missed);
    CHECK(ended.sample == runEnd);
    CHECK(ended.after == Standing{Tempo::bpm(116), 0});
    bench.miss(); // in the gap after a missed run: no effect
    bench.renderUntil(Kind::runBegan);
    CHECK(bench.count(Kind::lateMiss) == 0);
    const PulseGrid after{{runEnd, 0}, Tempo::bpm(116), {48'000}, 1};
    CHECK(bench.last(Kind::runBegan).sample == after.sampleOf(8));
}

TEST_CASE("when playing on without a gap, a missed run still gets its landing note") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.playOn = true;
    plan.countInBars = 0;
    plan.breathBeats = 0;
    bench.start(plan);
    bench.renderTo(2 * beat + 100);
    bench.miss();
    bench.renderTo(10 * beat);
    CHECK(bench.onsets().back() == 8 * beat);
    CHECK(bench.last(Kind::runEnded).sample == 9 * beat);
}

TEST_CASE("when playing on, an open-ended run with a press ends missed") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.playOn = true;
    plan.bars = 0;
    bench.start(plan);
    bench.renderTo(6 * beat + 10);
    bench.miss();
    bench.renderTo(9 * beat + 10);
    CHECK(bench.count(Kind::runEnded) == 0);
    bench.clean();
    bench.renderTo(11 * beat);
    CHECK(bench.last(Kind::runEnded).mark == Mark::missed);
}

TEST_CASE("a miss at the floor still ends the streak") {
    DrillBench bench;
    auto plan = benchPlan(Tempo::bpm(120), 3);
    plan.rule.floor = Tempo::bpm(120);
    bench.start(plan);
    bench.renderTo(6 * beat);
    bench.miss();
    bench.renderTo(7 * beat);
    CHECK(bench.last(Kind::runEnded).after == Standing{Tempo::bpm(120), 0});
    CHECK(bench.count(Kind::tempoMoved) == 0);
}

TEST_CASE("a press older than anything known is ignored, and one from the future counts as now") {
    DrillBench bench;
    bench.renderTo(1'000);
    bench.start(benchPlan());
    bench.renderTo(8 * beat);
    bench.miss(0);
    bench.renderTo(8 * beat + 500);
    CHECK(bench.count(Kind::runEnded) == 0);
    bench.miss(~0ULL);
    bench.renderTo(9 * beat + 1'000);
    CHECK(bench.last(Kind::runEnded).mark == Mark::missed);
}
