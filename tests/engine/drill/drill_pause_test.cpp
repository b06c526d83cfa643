// SPDX-License-Identifier: GPL-3.0-or-later
// When the drill pauses, and the cues that the player hears instead of looking.
#include "drill_bench.h"

#include "engine/click/click_voice.h"

#include <doctest/doctest.h>

#include <vector>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

constexpr std::uint64_t beat = 24'000;

/// A run of one bar that is missed in its second beat.
void missOneRun(DrillBench& bench) {
    const auto began = bench.renderUntil(Kind::runBegan);
    REQUIRE(began);
    bench.renderSeconds(0.7);
    bench.miss();
    bench.renderSeconds(0.01);
}

/// Only cues sound.
Mix cuesOnly() {
    Mix mix;
    mix.muted.fill(true);
    mix.muted[static_cast<std::size_t>(Layer::cue)] = false;
    mix.level = 1.0F;
    return mix;
}

void hearCuesOnly(DrillBench& bench) { bench.send({.kind = Command::Kind::setMix, .mix = cuesOnly()}); }

/// The sound of a cue by itself.
std::vector<float> soundOf(Cue cue) {
    ClickBank bank;
    bank.prepare({48'000});
    bank.cue(cuesOnly(), cue, 0);
    std::vector<float> out(14'000);
    bank.mix(out);
    return out;
}

bool heardAt(const DrillBench& bench, std::uint64_t sample, Cue cue) {
    const auto expected = soundOf(cue);
    return std::equal(expected.begin(), expected.end(),
                      bench.sound.begin() + static_cast<std::ptrdiff_t>(sample));
}

bool silent(const DrillBench& bench, std::uint64_t from, std::uint64_t to) {
    const auto heard = bench.onsets(from);
    return heard.empty() || heard.front() >= to;
}

} // namespace

TEST_CASE("after that many runs without a key press, the drill pauses at the beginning of the gap and "
          "resumes with the count-in") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 1;
    plan.pauseAfterRuns = 3;
    plan.rule.cleanRuns = 9;
    bench.start(plan);
    REQUIRE(bench.renderUntil(Kind::paused));
    CHECK(bench.count(Kind::runEnded) == 3);
    CHECK(bench.last(Kind::paused).pause == Pause::noKey);
    CHECK(bench.last(Kind::paused).sample == bench.last(Kind::runEnded).sample);
    const auto silence = bench.now();
    bench.renderSeconds(30);
    CHECK(bench.onsets(silence).empty());
    bench.resume();
    const auto resumed = bench.now();
    REQUIRE(bench.renderUntil(Kind::paused));
    CHECK(bench.count(Kind::runEnded) == 6);
    CHECK(bench.onsets(silence).front() == resumed);
}

TEST_CASE("a press during a pause has no effect, even after a clean run") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.pauseAfterRuns = 1;
    bench.start(plan);
    REQUIRE(bench.renderUntil(Kind::paused));
    bench.renderSeconds(1);
    bench.miss();
    bench.renderSeconds(1);
    bench.resume();
    bench.renderSeconds(1);
    bench.miss(); // the pause already asked about the run before it
    bench.renderSeconds(0.5);
    CHECK(bench.count(Kind::lateMiss) == 0);
}

TEST_CASE("without a gap, the run before a pause still gets its landing note") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.countInBars = 0;
    plan.breathBeats = 0;
    plan.pauseAfterRuns = 2;
    bench.start(plan);
    bench.renderTo(20 * beat);
    CHECK(bench.all(Kind::runEnded)[0].sample == 8 * beat);
    CHECK(bench.last(Kind::paused).sample == 17 * beat);
    CHECK(bench.onsets().back() == 16 * beat);
}

TEST_CASE("any key press restarts the count of runs without one") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 1;
    plan.pauseAfterRuns = 3;
    plan.rule.cleanRuns = 9;
    bench.start(plan);
    bench.renderUntil(Kind::runEnded);
    bench.renderUntil(Kind::runEnded);
    bench.clean();
    REQUIRE(bench.renderUntil(Kind::paused));
    CHECK(bench.count(Kind::runEnded) == 5);
}

TEST_CASE("with pauses set to never, a hundred runs without a key press do not pause") {
    DrillBench bench(SampleRate{8'000});
    auto plan = benchPlan(Tempo::bpm(400));
    plan.bars = 1;
    plan.pauseAfterRuns = 0;
    bench.start(plan);
    bench.renderSeconds(200);
    CHECK(bench.count(Kind::runEnded) > 100);
    CHECK(bench.count(Kind::paused) == 0);
}

TEST_CASE("three misses without a clean run cause a pause, and counting starts again after it") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 1;
    bench.start(plan);
    for (int i = 0; i < 3; ++i) missOneRun(bench);
    REQUIRE(bench.count(Kind::paused) == 1);
    CHECK(bench.last(Kind::paused).pause == Pause::threeMisses);
    CHECK(bench.last(Kind::paused).sample == bench.last(Kind::runEnded).sample);
    bench.miss(); // no effect during a pause
    bench.renderSeconds(5);
    CHECK(bench.count(Kind::runEnded) == 3);
    bench.resume();
    for (int i = 0; i < 2; ++i) missOneRun(bench);
    CHECK(bench.count(Kind::paused) == 1);
    missOneRun(bench);
    CHECK(bench.count(Kind::paused) == 2);
}

TEST_CASE("a clean run restarts the count of misses") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 1;
    bench.start(plan);
    missOneRun(bench);
    missOneRun(bench);
    bench.renderUntil(Kind::runEnded);
    missOneRun(bench);
    missOneRun(bench);
    CHECK(bench.count(Kind::paused) == 0);
}

TEST_CASE("two drops to below the start cause a pause") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 1;
    plan.start = Tempo::bpm(118);
    bench.start(plan);
    missOneRun(bench);
    bench.renderUntil(Kind::runEnded);
    missOneRun(bench);
    REQUIRE(bench.count(Kind::paused) == 1);
    CHECK(bench.last(Kind::paused).pause == Pause::belowStart);
}

TEST_CASE("a late miss counts towards the pause instead of the clean run it was") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 1;
    bench.start(plan);
    missOneRun(bench);
    missOneRun(bench);
    bench.renderUntil(Kind::runEnded);
    bench.renderSeconds(0.1);
    bench.miss();
    bench.renderSeconds(0.1);
    CHECK(bench.count(Kind::lateMiss) == 1);
    REQUIRE(bench.count(Kind::paused) == 1);
    CHECK(bench.last(Kind::paused).pause == Pause::threeMisses);
}

TEST_CASE("a press heard inside the last run before a pause is still its miss, and the pause continues") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.bars = 1;
    plan.pauseAfterRuns = 1;
    bench.start(plan);
    bench.renderUntil(Kind::paused);
    const auto end = bench.last(Kind::runEnded).sample;
    bench.miss(end - 100);
    bench.renderSeconds(3);
    CHECK(bench.count(Kind::lateMiss) == 1);
    CHECK(bench.last(Kind::lateMiss).after == Standing{Tempo::bpm(116), 0});
    CHECK(bench.onsets(end + 1).empty());
    bench.resume();
    bench.renderUntil(Kind::runBegan);
    CHECK(bench.last(Kind::runBegan).tempo == Tempo::bpm(116));
}

TEST_CASE("a fall is heard at the beginning of the gap after a drop") {
    DrillBench bench;
    hearCuesOnly(bench);
    bench.start(benchPlan());
    bench.renderTo(6 * beat + 5'000);
    bench.miss();
    bench.renderTo(9 * beat);
    CHECK(heardAt(bench, 7 * beat, Cue::fall));
}

TEST_CASE(
    "a rise is heard at the beginning of the gap after a climb, and nothing if the tempo stays the same") {
    DrillBench bench;
    hearCuesOnly(bench);
    bench.start(benchPlan(Tempo::bpm(120), 4));
    bench.renderTo(20 * beat);
    CHECK(heardAt(bench, 13 * beat, Cue::rise));
    DrillBench stays;
    hearCuesOnly(stays);
    stays.start(benchPlan(Tempo::bpm(120), 1));
    stays.renderTo(20 * beat);
    CHECK(stays.onsets().empty());
}

TEST_CASE("the run that would complete the streak is announced before its count-in") {
    DrillBench bench;
    hearCuesOnly(bench);
    bench.start(benchPlan(Tempo::bpm(120), 3));
    bench.renderTo(20 * beat);
    CHECK(silent(bench, 0, 13 * beat));
    CHECK(heardAt(bench, 13 * beat, Cue::lastOfStreak));
    DrillBench first;
    hearCuesOnly(first);
    first.start(benchPlan(Tempo::bpm(120), 4));
    first.renderTo(2 * beat);
    CHECK(heardAt(first, 0, Cue::lastOfStreak));
}

TEST_CASE("a streak given back in the gap announces the run that would complete it") {
    DrillBench bench;
    hearCuesOnly(bench);
    bench.start(benchPlan(Tempo::bpm(120), 1));
    bench.renderTo(13 * beat + 500);
    bench.adopt({Tempo::bpm(120), 4}, 1);
    bench.renderTo(15 * beat);
    CHECK(heardAt(bench, 13 * beat + 500, Cue::lastOfStreak));
}

TEST_CASE("if a rise and an announcement coincide, the announcement comes a little later") {
    DrillBench bench;
    hearCuesOnly(bench);
    auto plan = benchPlan();
    plan.rule.cleanRuns = 1;
    bench.start(plan);
    bench.renderTo(17 * beat);
    CHECK(heardAt(bench, 13 * beat, Cue::rise));
    CHECK(heardAt(bench, 13 * beat + 19'200, Cue::lastOfStreak));
}

TEST_CASE("without a gap, a cue sounds together with the first beat") {
    DrillBench bench;
    hearCuesOnly(bench);
    auto plan = benchPlan(Tempo::bpm(120), 4);
    plan.countInBars = 0;
    plan.breathBeats = 0;
    bench.start(plan);
    bench.renderTo(10 * beat);
    CHECK(bench.all(Kind::runBegan)[1].sample == 8 * beat);
    CHECK(heardAt(bench, 8 * beat, Cue::rise));
}

TEST_CASE("a try has no cues") {
    DrillBench bench;
    hearCuesOnly(bench);
    auto plan = benchPlan(Tempo::bpm(120), 4);
    plan.apart = plan.once = true;
    bench.start(plan);
    bench.renderTo(20 * beat);
    CHECK(bench.onsets().empty());
}
