// SPDX-License-Identifier: GPL-3.0-or-later
// When nobody reads, pulses are dropped and counted; events that decide the mark of a run are kept.
#include "drill_bench.h"

#include <doctest/doctest.h>

#include <array>
#include <vector>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

DrillPlan shortRuns() {
    auto plan = benchPlan(Tempo::bpm(400));
    plan.rule.target = Tempo::bpm(400);
    plan.beatsPerBar = 1;
    plan.bars = 1;
    plan.subdivision = 8;
    plan.pauseAfterRuns = 0;
    return plan;
}

/// Renders while nobody reads.
void renderUnread(DrillEngine& engine, int seconds) {
    std::array<float, 800> out{};
    for (int block = 0; block < seconds * 10; ++block) engine.render(out);
}

} // namespace

TEST_CASE("a reader who stalls misses pulses, never the end of a run, and hears of all in order") {
    DrillBench bench(SampleRate{8'000});
    bench.start(shortRuns());
    renderUnread(bench.engine, 300);
    CHECK(bench.engine.pulsesNotSent() > 1'000);
    bench.collect();
    bench.renderSeconds(2); // the events kept back follow
    const auto ended = bench.all(Kind::runEnded);
    REQUIRE(ended.size() > 300);
    for (std::size_t i = 0; i < ended.size(); ++i) {
        CHECK(ended[i].run == i + 1);
        CHECK(ended[i].runsEnded == i + 1);
    }
    for (std::size_t i = 1; i < bench.events.size(); ++i)
        CHECK(bench.events[i - 1].sample <= bench.events[i].sample);
}

TEST_CASE("a reader who never comes back makes the drill pause before anything would be lost") {
    DrillBench bench(SampleRate{8'000});
    bench.start(shortRuns());
    renderUnread(bench.engine, 3'600);
    bench.renderSeconds(1);
    bench.renderSeconds(1);
    REQUIRE(bench.count(Kind::paused) == 1);
    const auto ended = bench.all(Kind::runEnded);
    for (std::size_t i = 0; i < ended.size(); ++i) CHECK(ended[i].runsEnded == i + 1);
    CHECK(ended.back().sample == bench.last(Kind::paused).sample);
    bench.resume();
    bench.renderSeconds(3);
    CHECK(bench.count(Kind::resumed) == 1);
    CHECK(bench.count(Kind::runEnded) > ended.size());
}

TEST_CASE("a full command queue refuses commands, and accepted ones are carried out in order") {
    DrillEngine engine;
    engine.prepare({48'000}, 64);
    int taken = 0;
    while (engine.send({.kind = Command::Kind::miss})) ++taken;
    CHECK(taken == 255);
    std::array<float, 64> out{};
    engine.render(out);
    CHECK(engine.send({.kind = Command::Kind::miss}));
}
