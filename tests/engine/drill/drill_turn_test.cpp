// SPDX-License-Identifier: GPL-3.0-or-later
// Turns of a set: when one is over, how the next one is announced, and what belongs to which.
#include "drill_bench.h"

#include "engine/click/click_voice.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <vector>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

constexpr std::uint64_t beat = 24'000;
constexpr std::uint64_t second = 48'000;
/// Count-in of four beats, a run of one bar with its landing beat, and two beats of breath.
constexpr std::uint64_t cycle = 11 * beat;

DrillPlan turnPlan(const Turn& turn) {
    auto plan = benchPlan();
    plan.bars = 1;
    plan.rule.cleanRuns = 9;
    plan.turn = turn;
    return plan;
}

/// Plays until a turn is over.
Event turnOver(DrillBench& bench) {
    const auto stopped = bench.renderUntil(Kind::stopped);
    REQUIRE(stopped);
    REQUIRE(stopped->turnOver);
    return *stopped;
}

/// A turn of one run has ended, and the next one has been sent for and begins to render.
std::uint64_t secondTurn(DrillBench& bench, DrillPlan next = turnPlan({2, 3, 0, true})) {
    bench.start(turnPlan({1, 1, 0, false}));
    turnOver(bench);
    const auto begins = bench.now();
    bench.start(next);
    bench.renderTo(begins + 48);
    return begins;
}

Mix cuesOnly() {
    Mix mix;
    mix.muted.fill(true);
    mix.muted[static_cast<std::size_t>(Layer::cue)] = false;
    mix.level = 1.0F;
    return mix;
}

std::vector<float> toneAlone() {
    ClickBank bank;
    bank.prepare({48'000});
    bank.cue(cuesOnly(), Cue::turn, 0);
    std::vector<float> out(second / 5);
    bank.mix(out);
    return out;
}

/// What must sound from `from` to `to`: that many tones, and nothing else.
std::vector<float> announced(std::uint64_t first, int tones, std::uint64_t from, std::uint64_t to) {
    const auto tone = toneAlone();
    std::vector<float> out(to - from);
    for (int i = 0; i < tones; ++i) {
        const auto at = first + static_cast<std::uint64_t>(i) * 3 * second / 10 - from;
        std::copy(tone.begin(), tone.end(), out.begin() + static_cast<std::ptrdiff_t>(at));
    }
    return out;
}

std::vector<float> heard(const DrillBench& bench, std::uint64_t from, std::uint64_t to) {
    return {bench.sound.begin() + static_cast<std::ptrdiff_t>(from),
            bench.sound.begin() + static_cast<std::ptrdiff_t>(to)};
}

} // namespace

TEST_CASE("a turn of three runs is over at the end of the third") {
    DrillBench bench;
    bench.start(turnPlan({1, 3, 0, false}));
    const auto over = turnOver(bench);
    CHECK(bench.count(Kind::runEnded) == 3);
    CHECK(over.sample == bench.last(Kind::runEnded).sample);
    CHECK(over.sample == 2 * second + 2 * cycle + 9 * beat);
    const auto silence = bench.now();
    bench.renderSeconds(20);
    CHECK(bench.onsets(silence).empty());
}

TEST_CASE("a missed run counts, a void one does not") {
    DrillBench bench;
    bench.start(turnPlan({1, 2, 0, false}));
    REQUIRE(bench.renderUntil(Kind::runBegan));
    bench.adopt({Tempo::bpm(100), 0});
    REQUIRE(bench.renderUntil(Kind::runEnded));
    CHECK(bench.last(Kind::runEnded).mark == Mark::voided);
    REQUIRE(bench.renderUntil(Kind::runBegan));
    bench.miss();
    const auto over = turnOver(bench);
    REQUIRE(bench.count(Kind::runEnded) == 3);
    CHECK(bench.all(Kind::runEnded)[1].mark == Mark::missed);
    CHECK(over.sample == bench.last(Kind::runEnded).sample);
}

TEST_CASE("a turn of some time is over with the run in which it passes, and a pause takes none of it") {
    DrillBench bench;
    SUBCASE("at the very end of a run") { // runs end 4.5, 10, 15.5 s after the count-in began
        bench.start(turnPlan({1, 0, 10, false}));
        CHECK(turnOver(bench).sample == 2 * second + 10 * second);
    }
    SUBCASE("in the breath: one more run") {
        bench.start(turnPlan({1, 0, 11, false}));
        CHECK(turnOver(bench).sample == 2 * second + 31 * second / 2);
    }
    SUBCASE("with a pause of a minute after the first two runs") {
        auto plan = turnPlan({1, 0, 12, false});
        plan.pauseAfterRuns = 2;
        bench.start(plan);
        REQUIRE(bench.renderUntil(Kind::paused));
        bench.renderSeconds(60);
        const auto resumed = bench.now();
        bench.resume();
        CHECK(turnOver(bench).sample == resumed + 9 * beat); // 10 s before the pause, and 4.5 s after it
    }
}

TEST_CASE("a turn is announced by as many tones as its place, and then the count-in comes") {
    for (int place = 1; place <= Turn::mostPlaces; ++place) {
        CAPTURE(place);
        DrillBench bench;
        bench.send({.kind = Command::Kind::setMix, .mix = cuesOnly()});
        auto next = turnPlan({place, 3, 0, true});
        next.rule.cleanRuns = 9;
        const auto begins = secondTurn(bench, next);
        REQUIRE(bench.renderUntil(Kind::pulse));
        const auto countIn = bench.last(Kind::pulse).sample;
        CHECK(bench.last(Kind::pulse).phase == Phase::countIn);
        CHECK(countIn == begins + 3 * second);
        bench.renderTo(countIn + second);
        CHECK(heard(bench, begins, countIn + second) ==
              announced(begins + second, place, begins, countIn + second));
    }
}

TEST_CASE("the first turn of a set is announced at once") {
    DrillBench bench;
    bench.send({.kind = Command::Kind::setMix, .mix = cuesOnly()});
    bench.start(turnPlan({1, 3, 0, false}));
    REQUIRE(bench.renderUntil(Kind::pulse));
    CHECK(bench.last(Kind::pulse).sample == 2 * second);
    bench.renderTo(3 * second);
    CHECK(heard(bench, 0, 3 * second) == announced(0, 1, 0, 3 * second));
}

TEST_CASE("the tones fall silent with the cues, and the count-in comes all the same") {
    DrillBench bench;
    Mix mix = cuesOnly();
    mix.muted.fill(true);
    bench.send({.kind = Command::Kind::setMix, .mix = mix});
    const auto begins = secondTurn(bench);
    REQUIRE(bench.renderUntil(Kind::pulse));
    CHECK(bench.last(Kind::pulse).sample == begins + 3 * second);
    CHECK(bench.onsets(begins).empty());
}

TEST_CASE("stopped while it is announced, a turn plays nothing but the tone that sounds") {
    DrillBench bench;
    bench.send({.kind = Command::Kind::setMix, .mix = cuesOnly()});
    const auto begins = secondTurn(bench);
    bench.renderTo(begins + second + 480); // in the first of two tones
    bench.stop();
    bench.renderSeconds(10);
    CHECK(heard(bench, begins, begins + 10 * second) ==
          announced(begins + second, 1, begins, begins + 10 * second));
    CHECK_FALSE(bench.last(Kind::stopped).turnOver);
    CHECK(bench.count(Kind::runEnded) == 1);
}

TEST_CASE("another standing during the announcement moves neither tones nor count-in") {
    DrillBench bench;
    bench.send({.kind = Command::Kind::setMix, .mix = cuesOnly()});
    const auto begins = secondTurn(bench);
    bench.renderTo(begins + second / 2);
    Tempo tempo = Tempo::bpm(100);
    SUBCASE("another tempo") {}
    SUBCASE("another streak") { tempo = Tempo::bpm(120); }
    bench.adopt({tempo, 3});
    REQUIRE(bench.renderUntil(Kind::pulse));
    CHECK(bench.last(Kind::pulse).sample == begins + 3 * second);
    CHECK(bench.last(Kind::pulse).tempo == tempo);
    CHECK(heard(bench, begins, begins + 3 * second) ==
          announced(begins + second, 2, begins, begins + 3 * second));
}

TEST_CASE("a press between two turns and before the first note belongs to the last run of the turn before") {
    DrillBench bench;
    bench.start(turnPlan({1, 2, 0, false}));
    turnOver(bench);
    const auto next = turnPlan({2, 3, 0, true});
    SUBCASE("before the next turn was sent for") {
        bench.renderSeconds(0.3);
        bench.miss();
        bench.renderSeconds(0.01);
        CHECK(bench.last(Kind::lateMiss).after == Standing{Tempo::bpm(120), 2});
    }
    SUBCASE("in the announcement") {
        bench.start(next);
        bench.renderSeconds(1.2);
        bench.miss();
        bench.renderSeconds(0.01);
        CHECK(bench.last(Kind::lateMiss).after == next.standing);
    }
    SUBCASE("in the count-in, which goes on") {
        const auto begins = bench.now();
        bench.start(next);
        bench.renderSeconds(4);
        bench.miss();
        REQUIRE(bench.renderUntil(Kind::runBegan));
        CHECK(bench.last(Kind::runBegan).sample == begins + 3 * second + 4 * beat);
        CHECK(bench.last(Kind::runBegan).tempo == next.standing.tempo);
    }
    SUBCASE("heard before the first note, though more was rendered") {
        bench.start(next);
        REQUIRE(bench.renderUntil(Kind::runBegan));
        bench.renderSeconds(0.1);
        bench.miss(bench.last(Kind::runBegan).sample - 1);
        bench.renderSeconds(0.01);
    }
    REQUIRE(bench.count(Kind::lateMiss) == 1);
    CHECK(bench.last(Kind::lateMiss).run == 2);
    CHECK(bench.count(Kind::runEnded) == 2);
    bench.miss(bench.all(Kind::runEnded)[1].sample + 1); // a second press for the same miss
    bench.renderSeconds(0.01);
    CHECK(bench.count(Kind::lateMiss) == 1);
}

TEST_CASE("a press at the first note belongs to the run that begins") {
    DrillBench bench;
    secondTurn(bench);
    REQUIRE(bench.renderUntil(Kind::runBegan));
    bench.miss(bench.last(Kind::runBegan).sample);
    bench.renderSeconds(0.01);
    CHECK(bench.count(Kind::lateMiss) == 0);
    CHECK(bench.last(Kind::runEnded).mark == Mark::missed);
    CHECK(bench.last(Kind::runEnded).run == 2);
}

TEST_CASE("after a missed last run, and once a pause has asked, a press before the first note does nothing") {
    DrillBench bench;
    auto plan = turnPlan({1, 1, 0, false});
    SUBCASE("missed") {
        bench.start(plan);
        REQUIRE(bench.renderUntil(Kind::runBegan));
        bench.miss();
    }
    SUBCASE("asked") {
        plan.pauseAfterRuns = 1;
        bench.start(plan);
        REQUIRE(bench.renderUntil(Kind::paused));
        bench.resume();
    }
    turnOver(bench);
    bench.miss();
    bench.start(turnPlan({2, 3, 0, true}));
    bench.renderSeconds(2);
    bench.miss();
    bench.renderSeconds(0.1);
    CHECK(bench.count(Kind::lateMiss) == 0);
}

TEST_CASE("a start that follows no turn knows no earlier run") {
    DrillBench bench;
    bench.start(turnPlan({1, 1, 0, false}));
    turnOver(bench);
    bench.start(turnPlan({2, 3, 0, false}));
    bench.renderSeconds(1);
    bench.miss();
    bench.renderSeconds(0.1);
    CHECK(bench.count(Kind::lateMiss) == 0);
}

TEST_CASE("runs without a key press are counted across turns, and a pause at the end of a turn comes first") {
    DrillBench bench;
    auto plan = turnPlan({1, 3, 0, false});
    plan.pauseAfterRuns = 6;
    bench.start(plan);
    turnOver(bench);
    plan.turn = {2, 3, 0, true};
    bench.start(plan);
    REQUIRE(bench.renderUntil(Kind::paused));
    CHECK(bench.last(Kind::paused).pause == Pause::noKey);
    CHECK(bench.count(Kind::runEnded) == 6);
    CHECK(bench.count(Kind::stopped) == 1);
    bench.resume();
    const auto over = turnOver(bench);
    CHECK(over.sample == bench.last(Kind::resumed).sample);
    CHECK(bench.count(Kind::runBegan) == 6);
}

TEST_CASE("without a gap, the last run of a turn has a landing note of its own") {
    auto plan = turnPlan({1, 3, 0, false});
    plan.countInBars = 0;
    plan.breathBeats = 0;
    SUBCASE("by runs") {}
    SUBCASE("by time") { plan.turn = {1, 0, 6, false}; }
    DrillBench bench;
    bench.start(plan);
    const auto over = turnOver(bench);
    CHECK(over.sample == 2 * second + 13 * beat);
    CHECK(bench.last(Kind::pulse).sample == 2 * second + 12 * beat);
    CHECK(bench.onsets(2 * second).back() == 2 * second + 12 * beat);
}

TEST_CASE("a change of rate during a turn keeps its time") {
    DrillBench bench;
    bench.start(turnPlan({1, 0, 12, false}));
    bench.renderTo(2 * second + 10 * second + 480); // in the breath after the second run
    bench.engine.prepare({96'000}, 1024);
    const auto changed = bench.now();
    const auto over = turnOver(bench);
    CHECK(bench.count(Kind::runEnded) == 3);
    CHECK(over.sample > changed + 2 * 4 * second); // counted in again
}
