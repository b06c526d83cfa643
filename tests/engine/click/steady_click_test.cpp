// SPDX-License-Identifier: GPL-3.0-or-later
#include "../drill/drill_bench.h"
#include "../playback/playback_bench.h"

#include "engine/click/click_plan.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

ClickPlan plan(int bpm, int beats = 4, int subdivision = 1) {
    ClickPlan made;
    made.tempo = Tempo::bpm(bpm);
    made.beatsPerBar = beats;
    made.subdivision = subdivision;
    return made;
}

void click(DrillBench& bench, const ClickPlan& plan, std::uint64_t number = 1) {
    bench.send({.kind = Command::Kind::click, .number = number, .click = plan});
}

void endClick(DrillBench& bench, std::uint64_t number = 1) {
    bench.send({.kind = Command::Kind::endClick, .number = number});
}

/// The nearest sample to `beats` beats and `part` of `parts` after `from`, which is a whole sample.
std::uint64_t after(std::uint64_t from, std::uint64_t beats, std::uint64_t part, std::uint64_t parts,
                    int bpm) {
    const std::uint64_t above = (beats * parts + part) * 60 * 48'000;
    const std::uint64_t below = parts * static_cast<std::uint64_t>(bpm);
    return from + (2 * above + below) / (2 * below);
}

std::vector<Event> pulses(const DrillBench& bench) { return bench.all(Kind::pulse); }

} // namespace

TEST_CASE("a click without a passage begins at once, with every pulse at the nearest sample") {
    DrillBench bench;
    bench.renderTo(1'001);
    click(bench, plan(137, 3, 7));
    bench.renderSeconds(60);
    const auto found = bench.onsets();
    REQUIRE(found.size() > 950);
    for (std::size_t k = 0; k < found.size(); ++k) CHECK(found[k] == after(1'001, k / 7, k % 7, 7, 137));
    CHECK(bench.events.front().kind == Kind::clickBegan);
    CHECK(bench.events.front().run == 1);
    for (const auto& pulse : pulses(bench)) CHECK(pulse.run == 0);
}

TEST_CASE("a change of tempo takes effect at the next beat, without a gap and to the sample") {
    DrillBench bench;
    click(bench, plan(120));
    bench.renderTo(4 * 24'000 + 5'000); // in the fifth beat
    click(bench, plan(90));
    click(bench, plan(137)); // the last word counts
    bench.renderSeconds(20);
    const auto found = bench.onsets();
    for (std::uint64_t k = 0; k < found.size(); ++k)
        CHECK(found[k] == (k < 6 ? k * 24'000 : after(5 * 24'000, k - 5, 0, 1, 137)));
    REQUIRE(found.size() > 40);
    // Which beat of which bar sounds does not change.
    const auto all = pulses(bench);
    for (std::size_t k = 0; k < all.size(); ++k) {
        CHECK(all[k].beat == static_cast<std::int32_t>(k % 4));
        CHECK(all[k].bar == static_cast<std::int32_t>(k / 4));
    }
}

TEST_CASE("a change of subdivision takes effect at the next beat and moves no beat") {
    DrillBench bench;
    click(bench, plan(120));
    bench.renderTo(30'000); // in the second beat
    click(bench, plan(120, 4, 3));
    bench.renderTo(100'000);
    const std::vector<std::uint64_t> wanted{0,      24'000, 48'000, 56'000, 64'000,
                                            72'000, 80'000, 88'000, 96'000};
    CHECK(bench.onsets() == wanted);
}

TEST_CASE("a change of meter takes effect at the next bar, one of tempo before it at the next beat") {
    DrillBench bench;
    click(bench, plan(120));
    bench.renderTo(30'000);
    click(bench, plan(240, 3));
    bench.renderTo(48'000 + 10 * 12'000);
    std::vector<std::uint64_t> bars;
    for (const auto& pulse : pulses(bench))
        if (pulse.layer == Layer::downbeat) bars.push_back(pulse.sample);
    // Two beats at 120 and two at 240 make up the first bar; then there are three to the bar.
    CHECK(bars == std::vector<std::uint64_t>{0, 72'000, 108'000, 144'000});
}

TEST_CASE("a thousand changes of tempo do not make the click drift") {
    DrillBench bench;
    const std::vector tempi{Tempo::clampedThousandths(137'500), Tempo::clampedThousandths(93'333),
                            Tempo::clampedThousandths(211'111)};
    long double place = 0;
    for (std::size_t beat = 0; beat < 1'000; ++beat) {
        auto next = plan(60);
        next.tempo = tempi[beat % tempi.size()];
        click(bench, next);
        bench.renderTo(static_cast<std::uint64_t>(place) + 2);
        CHECK(std::abs(static_cast<long double>(pulses(bench).back().sample) - place) < 0.501L);
        place += 60'000.0L * 48'000 / next.tempo.thousandths();
    }
    CHECK(bench.onsets().size() == 1'000);
}

TEST_CASE("it ends when it is asked to, and only by its own number") {
    DrillBench bench;
    click(bench, plan(120), 5);
    bench.renderTo(50'000);
    endClick(bench, 4);
    bench.renderTo(100'000);
    CHECK(bench.count(Kind::clickEnded) == 0);
    endClick(bench, 5);
    bench.renderTo(200'000);
    CHECK(bench.onsets(100'001).empty());
    CHECK(bench.last(Kind::clickEnded).run == 5);
    CHECK(bench.last(Kind::clickEnded).sample == 100'000);
    click(bench, plan(90), 5); // a change that comes too late
    bench.renderTo(300'000);
    CHECK(bench.onsets(100'001).empty());
    click(bench, plan(120), 6);
    bench.renderTo(300'010);
    CHECK(bench.onsets(100'001) == std::vector<std::uint64_t>{300'000});
}

TEST_CASE("a drill and a playback end it at their first sample, and while a drill runs it does not begin") {
    DrillBench bench;
    click(bench, plan(240));
    bench.renderTo(30'000);
    bench.start(benchPlan());
    bench.renderTo(60'000);
    CHECK(bench.last(Kind::clickEnded).sample == 30'000);
    CHECK(bench.all(Kind::started).front().sample == 30'000);
    CHECK(bench.onsets(30'000) == std::vector<std::uint64_t>{30'000, 54'000}); // the drill's count-in alone
    click(bench, plan(240), 2);
    bench.renderTo(70'000);
    CHECK(bench.last(Kind::clickEnded).run == 2);
    CHECK(bench.onsets(54'001).empty());
    bench.stop();
    bench.renderTo(80'000);
    click(bench, plan(240), 3);
    bench.renderTo(100'000);
    bench.engine.hear(playbackOf(plainPassage({noteAt({0, 1}, {1, 4})}), Tempo::bpm(120)));
    bench.renderTo(110'000);
    CHECK(bench.last(Kind::clickEnded).run == 3);
    CHECK(bench.count(Kind::playbackBegan) == 1);
    click(bench, plan(240), 4);
    bench.renderTo(200'000);
    CHECK(bench.count(Kind::playbackEnded) == 1);
    CHECK(bench.count(Kind::clickEnded) == 3);
}

TEST_CASE("while the drill pauses, the click may sound, and ends when the drill resumes") {
    DrillBench bench;
    auto drilled = benchPlan();
    drilled.pauseAfterRuns = 1;
    bench.start(drilled);
    REQUIRE(bench.renderUntil(Kind::paused));
    bench.renderSeconds(1);
    const auto from = bench.now();
    click(bench, plan(120));
    bench.renderTo(from + 50'000);
    CHECK(bench.onsets(from) == std::vector<std::uint64_t>{from, from + 24'000, from + 48'000});
    bench.resume();
    bench.renderTo(from + 50'010);
    CHECK(bench.last(Kind::clickEnded).sample == from + 50'000);
    CHECK(bench.last(Kind::resumed).sample == from + 50'000);
}

TEST_CASE("heard again, it is silent until a bar begins") {
    DrillBench bench;
    click(bench, plan(120));
    bench.renderTo(30'000);
    bench.engine.setHeard(false);
    bench.renderTo(55'000);
    bench.engine.setHeard(true);
    bench.renderTo(130'000);
    CHECK(bench.onsets() == std::vector<std::uint64_t>{0, 24'000, 96'000, 120'000});
    CHECK(bench.count(Kind::pulse) == 6); // the screen goes on
}

TEST_CASE("a device that changes its rate has the click go on at the next bar") {
    DrillBench bench;
    click(bench, plan(120));
    bench.renderTo(30'000);
    bench.engine.prepare({96'000}, 1024);
    bench.renderTo(250'000); // the rest of the bar took 66000 samples, twice as many now
    const std::vector<std::uint64_t> wanted{0, 24'000, 162'000, 210'000};
    CHECK(bench.onsets() == wanted);
    CHECK(bench.last(Kind::pulse).bar == 1);
}

TEST_CASE("any split into blocks gives the same click, bit for bit") {
    const auto played = [](std::size_t block) {
        DrillBench bench({44'100});
        bench.send({.kind = Command::Kind::setMix, .mix = {}});
        click(bench, plan(143, 5, 4));
        bench.renderTo(50'000, block);
        click(bench, plan(97, 3, 3));
        bench.renderTo(200'000, block);
        return bench.sound;
    };
    const auto whole = played(200'000);
    CHECK(played(61) == whole);
    CHECK(played(1) == whole);
}
