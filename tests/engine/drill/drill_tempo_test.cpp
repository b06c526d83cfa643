// SPDX-License-Identifier: GPL-3.0-or-later
// Adopted standings, and a device that changes its rate.
#include "drill_bench.h"

#include "engine/time/pulse_grid.h"

#include <doctest/doctest.h>

#include <array>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

constexpr std::uint64_t beat = 24'000;

} // namespace

TEST_CASE("another tempo takes effect at the next pulse, and the count-in starts again there") {
    DrillBench bench;
    auto plan = benchPlan(Tempo::bpm(120), 3);
    plan.subdivision = 4;
    bench.start(plan);
    bench.renderTo(5 * beat + 5'000);
    bench.adopt({Tempo::clampedThousandths(101'500), 0});
    bench.renderTo(20 * beat);
    const auto ended = bench.last(Kind::runEnded);
    const auto pulse = 5 * beat + 6'000;
    CHECK(ended.sample == pulse);
    CHECK(ended.mark == Mark::voided);
    CHECK(ended.voidReason == VoidReason::tempoChanged);
    CHECK(ended.after == Standing{Tempo::bpm(120), 3});
    CHECK(bench.last(Kind::tempoMoved).after == Standing{Tempo::clampedThousandths(101'500), 0});
    const PulseGrid after{{pulse, 0}, Tempo::clampedThousandths(101'500), {48'000}, 1};
    CHECK(bench.onsets(pulse).front() == pulse);
    CHECK(bench.last(Kind::runBegan).sample == after.sampleOf(4));
}

TEST_CASE("another tempo in the gap or the count-in ends no run") {
    for (const std::uint64_t at : {13 * beat + 5'000, 16 * beat + 5'000}) {
        DrillBench bench;
        bench.start(benchPlan(Tempo::bpm(120), 2));
        bench.renderTo(at);
        bench.adopt({Tempo::bpm(100), 0});
        bench.renderUntil(Kind::runBegan);
        CHECK(bench.count(Kind::runEnded) == 1);
        CHECK(bench.last(Kind::runBegan).tempo == Tempo::bpm(100));
        CHECK(bench.last(Kind::tempoMoved).after == Standing{Tempo::bpm(100), 0});
    }
}

TEST_CASE("a standing is adopted if the sender has seen every end of a run, otherwise refused") {
    DrillBench bench;
    bench.start(benchPlan(Tempo::bpm(120), 4));
    bench.renderTo(13 * beat + 100);
    bench.adopt({Tempo::bpm(120), 3}, 0);
    bench.renderSeconds(0.1);
    CHECK(bench.count(Kind::adoptRefused) == 1);
    CHECK(bench.count(Kind::adopted) == 0);
    bench.adopt({Tempo::bpm(120), 4}, 1);
    bench.renderUntil(Kind::runBegan);
    CHECK(bench.count(Kind::adopted) == 1);
    CHECK(bench.last(Kind::runBegan).tempo == Tempo::bpm(120));
}

TEST_CASE("a standing with the same tempo changes the streak and leaves the run alone") {
    DrillBench bench;
    bench.start(benchPlan(Tempo::bpm(120), 1));
    bench.renderTo(6 * beat);
    bench.adopt({Tempo::bpm(120), 3}, 0);
    bench.renderUntil(Kind::runEnded);
    CHECK(bench.last(Kind::runEnded).mark == Mark::clean);
    CHECK(bench.last(Kind::runEnded).after == Standing{Tempo::bpm(120), 4});
}

TEST_CASE("a standing with another tempo makes the run void and counts in again at the next pulse") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(6 * beat + 100);
    bench.adopt({Tempo::bpm(124), 2}, 0);
    bench.renderTo(12 * beat);
    CHECK(bench.last(Kind::runEnded).voidReason == VoidReason::tempoChanged);
    CHECK(bench.last(Kind::runEnded).sample == 7 * beat);
    CHECK(bench.onsets(6 * beat + 1).front() == 7 * beat);
    CHECK(bench.last(Kind::tempoMoved).after == Standing{Tempo::bpm(124), 2});
}

TEST_CASE("after a standing was adopted, the previous run can no longer be missed late") {
    for (const Standing taken : {Standing{Tempo::bpm(120), 1}, Standing{Tempo::bpm(100), 0}}) {
        DrillBench bench;
        bench.start(benchPlan());
        bench.renderTo(13 * beat + 100);
        bench.adopt(taken, 1);
        bench.renderTo(13 * beat + 200);
        bench.miss();
        bench.renderSeconds(0.2);
        CHECK(bench.count(Kind::lateMiss) == 0);
        CHECK(bench.last(Kind::adopted).after == taken);
    }
}

TEST_CASE("a try is not affected by an adopted standing") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.apart = plan.once = true;
    bench.start(plan);
    bench.renderTo(6 * beat + 100);
    bench.adopt({Tempo::bpm(90), 2}, 0);
    bench.renderTo(20 * beat);
    CHECK(bench.count(Kind::adopted) == 1);
    CHECK(bench.last(Kind::runEnded).mark == Mark::clean);
    CHECK(bench.last(Kind::runEnded).tempo == Tempo::bpm(120));
}

TEST_CASE("after a standing with another tempo is adopted without a count-in, a press in the first beat is "
          "the new run's miss") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.countInBars = 0;
    bench.start(plan);
    bench.renderTo(2 * beat + 100);
    bench.adopt({Tempo::bpm(100), 0}, 0);
    bench.renderTo(3 * beat + 5'000);
    bench.miss();
    bench.renderTo(5 * beat);
    CHECK(bench.last(Kind::runEnded).run == 2);
    CHECK(bench.last(Kind::runEnded).mark == Mark::missed);
}

TEST_CASE("a pause stays a pause when standings are adopted") {
    DrillBench bench;
    auto plan = benchPlan();
    plan.pauseAfterRuns = 1;
    bench.start(plan);
    bench.renderUntil(Kind::paused);
    const auto silence = bench.now();
    bench.adopt({Tempo::bpm(110), 0}, 1);
    bench.renderSeconds(2);
    bench.adopt({Tempo::bpm(100), 0}, 1);
    bench.renderSeconds(2);
    CHECK(bench.onsets(silence).empty());
    CHECK(bench.count(Kind::adopted) == 2);
    bench.resume();
    bench.renderUntil(Kind::runBegan);
    CHECK(bench.last(Kind::runBegan).tempo == Tempo::bpm(100));
}

TEST_CASE("a device that changes its rate begins a new origin at the next bar, and the run is void") {
    DrillBench bench;
    bench.start(benchPlan(Tempo::bpm(120), 3));
    bench.renderTo(5 * beat + 6'000); // three quarters of a beat and two beats before the end of the bar
    bench.engine.prepare({44'100}, 512);
    const auto changed = bench.now();
    CHECK(changed == 5 * beat + 6'000); // the sample count continues
    bench.renderTo(changed + 44'100 * 6);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.mark == Mark::voided);
    CHECK(ended.voidReason == VoidReason::soundLost);
    CHECK(ended.after == Standing{Tempo::bpm(120), 3});
    const auto bar = changed + (2 * beat + 18'000) * 441 / 480;
    const PulseGrid after{{bar, 0}, Tempo::bpm(120), {44'100}, 1};
    const auto onsets = bench.onsets(changed);
    for (std::uint64_t k = 0; k < 8; ++k) CHECK(onsets[k] == after.sampleOf(k));
}

TEST_CASE("the same rate prepared again changes nothing") {
    DrillBench bench;
    bench.start(benchPlan());
    bench.renderTo(5 * beat + 6'000);
    bench.engine.prepare({48'000}, 2'048);
    bench.renderTo(12 * beat + 1);
    CHECK(bench.onsets().size() == 13);
    CHECK(bench.count(Kind::runEnded) == 0);
}

TEST_CASE("before it is prepared the engine is silent and counts nothing") {
    DrillEngine engine;
    std::array<float, 64> out{};
    out.fill(1.0F);
    engine.render(out);
    CHECK(out == std::array<float, 64>{});
    CHECK(engine.rendered() == 0);
}
