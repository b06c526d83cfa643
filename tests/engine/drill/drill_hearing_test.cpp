// SPDX-License-Identifier: GPL-3.0-or-later
// Sound that is lost and comes back while the drill continues.
#include "drill_bench.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::engine;

namespace {

using Kind = Event::Kind;
constexpr std::uint64_t beat = 24'000; // at 120 and 48 kHz

DrillPlan fourFour(std::int32_t streak = 0) { return benchPlan(Tempo::bpm(120), streak); }

} // namespace

TEST_CASE(
    "a run in which the sound is lost is void and changes nothing; the count-in comes with the next bar") {
    DrillBench bench;
    bench.start(fourFour(3));
    bench.renderTo(5 * beat + 6'000);
    bench.engine.setHeard(false);
    bench.renderTo(30 * beat);
    const auto ended = bench.all(Kind::runEnded).front();
    CHECK(ended.mark == Mark::voided);
    CHECK(ended.voidReason == VoidReason::soundLost);
    CHECK(ended.after == Standing{Tempo::bpm(120), 3});
    const auto began = bench.all(Kind::runBegan);
    REQUIRE(began.size() >= 2);
    CHECK(began[0].sample == 4 * beat);
    CHECK(began[1].sample == 12 * beat); // beats 8…12 are the count-in
}

TEST_CASE("a drill that cannot be heard makes no sound and continues counting runs by the same rule") {
    DrillBench bench;
    bench.start(fourFour());
    bench.renderTo(2 * beat + 1);
    bench.engine.setHeard(false);
    const auto lost = bench.now();
    bench.renderTo(200 * beat);
    CHECK(bench.onsets(lost).empty());
    const auto ended = bench.all(Kind::runEnded);
    REQUIRE(ended.size() >= 5);
    for (const auto& run : ended) CHECK(run.mark == Mark::clean);
    CHECK(bench.count(Kind::tempoMoved) >= 1);
}

TEST_CASE("when the sound is back, it joins at the beginning of a bar, on the old grid") {
    for (std::uint64_t back = 4 * beat + 1; back < 8 * beat; back += 5'003) {
        CAPTURE(back);
        DrillBench bench;
        bench.start(fourFour());
        bench.renderTo(2 * beat + 1);
        bench.engine.setHeard(false);
        bench.renderTo(back);
        bench.engine.setHeard(true);
        bench.renderTo(12 * beat + 1);
        const auto onsets = bench.onsets(2 * beat + 1);
        REQUIRE_FALSE(onsets.empty());
        CHECK(onsets.front() == 8 * beat);
        CHECK(bench.sound[onsets.front()] == 1.0F);
        CHECK(bench.all(Kind::runEnded).empty()); // coming back makes no run void
    }
}

TEST_CASE("sound that came back before the drill began is heard from its first beat") {
    DrillBench bench;
    bench.renderTo(beat);
    bench.engine.setHeard(false);
    bench.renderTo(2 * beat);
    bench.engine.setHeard(true);
    bench.start(fourFour());
    bench.renderTo(3 * beat);
    CHECK(bench.onsets().front() == 2 * beat);
}

TEST_CASE("a try in which the sound is lost is void, and the drill stops") {
    DrillBench bench;
    auto plan = fourFour();
    plan.apart = plan.once = true;
    bench.start(plan);
    bench.renderTo(5 * beat);
    bench.engine.setHeard(false);
    bench.renderTo(20 * beat);
    CHECK(bench.count(Kind::stopped) == 1);
    REQUIRE(bench.count(Kind::runEnded) == 1);
    CHECK(bench.last(Kind::runEnded).voidReason == VoidReason::soundLost);
}
