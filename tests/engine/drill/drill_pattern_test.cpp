// SPDX-License-Identifier: GPL-3.0-or-later
// The click pattern in the drill: what is silent, and that everything else continues.
#include "../time/exact.h"
#include "drill_bench.h"
#include "drill_script.h"

#include "engine/click/click_track.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace piolo;
using namespace piolo::engine;
using Kind = Event::Kind;

namespace {

constexpr std::uint64_t beat = 24'000; // at 120 BPM and 48 kHz

Passage aPassage(const ClickPattern& click, std::int32_t subdivision = 1) {
    Passage passage;
    passage.music.subdivision = subdivision;
    passage.music.landing = false;
    passage.music.breathBeats = 0;
    passage.tempi.start = Tempo::clampedThousandths(137'125);
    passage.tempi.rule.target = Tempo::bpm(200);
    passage.click = click;
    return passage;
}

DrillPlan planOfPassage(const Passage& passage) {
    return planOf(passage, {passage.tempi.start, 0}, PracticeSettings{});
}

/// The same passage as a written track of three runs.
ClickTrack trackOf(const Passage& passage) {
    ClickTrack track;
    track.meter = passage.music.meter;
    track.subdivision = passage.music.subdivision;
    track.click = passage.click;
    for (int run = 0; run < 3; ++run) {
        track.stretches.push_back({passage.tempi.start, 1, true});
        track.stretches.push_back({passage.tempi.start, passage.music.bars, false});
    }
    return track;
}

std::vector<std::uint64_t> sounding(const std::vector<TrackPulse>& pulses) {
    std::vector<std::uint64_t> samples;
    for (const auto& pulse : pulses)
        if (pulse.sounds) samples.push_back(pulse.sample);
    return samples;
}

ClickPattern anyPattern(Random& random) {
    const auto small = [&](std::int64_t least, std::int64_t most) {
        return static_cast<std::int32_t>(between(random, least, most));
    };
    ClickPattern click;
    for (auto count = small(0, 5); count > 0; --count)
        click.accents.push_back(static_cast<Accent>(small(0, 3)));
    const auto shorter = small(1, 33);
    click.swing = {small(shorter, 3 * std::int64_t{shorter}), shorter};
    click.swung = static_cast<SwungNotes>(small(0, 1));
    click.barsOn = small(1, 3);
    click.barsOff = small(0, 2);
    click.silentBars = small(0, 40);
    click.leftOutBeats = small(0, 40);
    click.seed = small(0, ClickPattern::mostSeed);
    for (std::int32_t bar = 1; bar <= 8; bar += small(1, 3))
        click.breaths.push_back({bar, small(1, 5), small(1, 4)});
    click.breathBelow = Tempo::bpm(small(130, 150));
    return click;
}

} // namespace

TEST_CASE("a passage without a pattern clicks every pulse on the sample nearest to its exact place") {
    for (const int hertz : {44'100, 48'000, 96'000}) {
        const auto passage = aPassage({}, 3);
        DrillBench bench(SampleRate{hertz});
        bench.start(planOfPassage(passage));
        std::vector<std::uint64_t> expected;
        for (std::uint64_t at = 0; at < 4; ++at)
            expected.push_back(nearestSample(at, 0, 1, passage.tempi.start, {hertz}));
        for (std::uint64_t at = 4; at < 20; ++at)
            for (std::uint64_t part = 0; part < 3; ++part)
                expected.push_back(nearestSample(at, part, 3, passage.tempi.start, {hertz}));
        bench.renderTo(nearestSample(20, 0, 1, passage.tempi.start, {hertz}));
        CHECK(bench.onsets() == expected);
        for (const auto& pulse : bench.all(Kind::pulse)) CHECK((pulse.sounds && !pulse.waits));
    }
}

TEST_CASE("the drill and a written track choose the same clicks, run by run, on the same samples") {
    const auto seed = seedOr(1'234);
    INFO("PIOLO_SEED=" << seed);
    Random random(seed);
    std::size_t silent = 0;
    for (int round = 0; round < 16; ++round) {
        CAPTURE(round);
        const SampleRate rate{round % 2 == 0 ? 44'100 : 48'000};
        auto passage = aPassage(anyPattern(random), static_cast<std::int32_t>(between(random, 1, 8)));
        passage.click.on = static_cast<ClickOn>(round % 4);
        passage.music.bars = 8;
        const auto track = trackOf(passage);
        TrackPlayer player(track);
        player.prepare(rate, 512);
        const auto pulses = pulsesOf(track, rate);
        DrillBench bench(rate);
        bench.start(planOfPassage(passage));
        bench.renderTo(player.length());
        CHECK(bench.onsets() == sounding(pulses));
        silent += pulses.size() - bench.onsets().size();
    }
    CHECK(silent > 500);
}

TEST_CASE("the count-in clicks every beat, whatever the pattern leaves out") {
    ClickPattern click;
    click.on = ClickOn::offbeats;
    click.accents = {Accent::silent};
    click.swing = {2, 1};
    click.silentBars = 100;
    click.leftOutBeats = 100;
    auto plan = planOfPassage(aPassage(click));
    plan.standing.tempo = Tempo::bpm(120);
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(24 * beat);
    CHECK(bench.onsets() == std::vector<std::uint64_t>{0, beat, 2 * beat, 3 * beat, 20 * beat, 21 * beat,
                                                       22 * beat, 23 * beat});
}

TEST_CASE("in a silent bar the pulses are reported, the bars are counted and the run counts as usual") {
    auto plan = benchPlan();
    plan.bars = 4;
    plan.subdivision = 2;
    plan.click.barsOff = 1;
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(22 * beat);
    std::int32_t reported = 0;
    for (const auto& pulse : bench.all(Kind::pulse)) {
        if (pulse.phase != Phase::run) continue;
        CHECK(pulse.bar == reported / 8);
        CHECK(pulse.beat == reported / 2 % 4);
        CHECK(pulse.sounds == (pulse.bar % 2 == 0));
        ++reported;
    }
    CHECK(reported == 33); // the landing note is the last
    CHECK(bench.onsets(8 * beat + 1).front() == 12 * beat);
    CHECK(bench.last(Kind::runEnded).sample == 21 * beat);
    CHECK(bench.last(Kind::runEnded).after == Standing{Tempo::bpm(120), 1});
}

TEST_CASE("a miss in a silent bar is a miss there") {
    auto plan = benchPlan();
    plan.click.silentBars = 100;
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(9 * beat + 100);
    bench.miss();
    bench.renderTo(9 * beat + 200);
    const auto ended = bench.last(Kind::runEnded);
    CHECK(ended.mark == Mark::missed);
    CHECK(ended.bar == 1);
    CHECK(ended.beat == 1);
    CHECK(ended.sample == 10 * beat);
}

TEST_CASE("the landing note sounds, whatever the pattern leaves out") {
    auto plan = benchPlan();
    plan.click.on = ClickOn::backbeats;
    plan.click.silentBars = 100;
    DrillBench bench;
    bench.start(plan);
    bench.renderTo(14 * beat);
    CHECK(bench.onsets(4 * beat) == std::vector<std::uint64_t>{12 * beat});
    CHECK(bench.sound[12 * beat] == 1.0F);
}

TEST_CASE("cues sound in silent bars too") {
    auto plan = benchPlan();
    plan.countInBars = 0;
    plan.breathBeats = 0;
    plan.landing = false;
    plan.rule.cleanRuns = 1;
    plan.rule.climb = 2;
    plan.click.silentBars = 100;
    DrillBench bench;
    Mix mix;
    mix.voice = Voice::reed;
    bench.send({.kind = Command::Kind::setMix, .mix = mix});
    bench.start(plan);
    bench.renderTo(7 * beat);
    const auto announced = bench.onsets();
    REQUIRE_FALSE(announced.empty()); // the next run would complete the streak of one
    CHECK(announced.back() < beat);
    bench.renderTo(10 * beat);
    CHECK(bench.onsets(7 * beat).front() >= 8 * beat); // the rising cue after the climb
    CHECK(bench.onsets(7 * beat).front() < 8 * beat + 100);
}

TEST_CASE("another run leaves out other beats; the first run of another drill leaves out the same") {
    auto plan = benchPlan();
    plan.bars = 8;
    plan.click.leftOutBeats = 50;
    const auto heardRuns = [&plan] {
        DrillBench bench;
        bench.start(plan);
        bench.renderTo(100 * beat);
        std::vector<std::vector<bool>> runs(3);
        for (const auto& pulse : bench.all(Kind::pulse))
            if (pulse.phase == Phase::run && pulse.run <= 2) runs[pulse.run].push_back(pulse.sounds);
        return runs;
    };
    const auto once = heardRuns();
    REQUIRE(once[1].size() == 33);
    CHECK(once[1] != once[2]);
    CHECK(once == heardRuns());
}
