// SPDX-License-Identifier: GPL-3.0-or-later
#include "../drill/drill_bench.h"
#include "playback_bench.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstring>

using namespace piolo;
using namespace piolo::engine;

namespace {

using Kind = Event::Kind;

/// A passage with a bit of everything, about four seconds long.
Passage lively() {
    std::vector<Note> notes;
    for (int i = 0; i < 12; ++i) notes.push_back(noteAt({i, 7}, {1, 7}, 55 + 2 * i));
    notes[2].articulation.slurBegins = notes[5].articulation.slurEnds = true;
    notes[7].articulation.accent = true;
    auto passage = plainPassage(std::move(notes));
    passage.music.subdivision = 4;
    passage.music.countInBars = 1;
    passage.music.landing = true;
    passage.click.leftOutBeats = 20;
    return passage;
}

PlaybackScore livelyModel() { return playbackOf(lively(), Tempo::clampedThousandths(251'003)); }

std::size_t count(const DrillBench& bench, Kind kind) {
    return static_cast<std::size_t>(
        std::ranges::count_if(bench.events, [&](const Event& event) { return event.kind == kind; }));
}

DrillPlan quickPlan() {
    DrillPlan plan;
    plan.standing.tempo = Tempo::bpm(240);
    return plan;
}

} // namespace

TEST_CASE("a playback sounds the same in blocks of any size, bit for bit") {
    const auto whole = soundOf(livelyModel(), {48'000}, true, 1'000'000);
    for (const std::size_t block : {1U, 61U, 509U, 4'096U}) {
        const auto other = soundOf(livelyModel(), {48'000}, true, block);
        REQUIRE(other.size() == whole.size());
        CHECK(std::memcmp(other.data(), whole.data(), whole.size() * sizeof(float)) == 0);
    }
}

TEST_CASE("the engine plays the same playback as the written one, and sends its pulses but no run") {
    DrillBench bench;
    Mix mix;
    mix.level = 1.0F;
    bench.send({.kind = Command::Kind::setMix, .mix = mix});
    CHECK(bench.engine.hear(livelyModel()) == 1);
    REQUIRE(bench.renderUntil(Kind::playbackEnded));
    CHECK(bench.events.front().kind == Kind::playbackBegan);
    CHECK(bench.events.back().kind == Kind::playbackEnded);
    CHECK(bench.events.back().run == 1);
    bench.renderSeconds(0.2);
    PlaybackTrack track(livelyModel(), mix);
    track.prepare({48'000}, 512);
    std::vector<float> written(bench.sound.size());
    track.render(written);
    CHECK(std::memcmp(written.data(), bench.sound.data(), written.size() * sizeof(float)) == 0);
    CHECK(count(bench, Kind::pulse) == 4 + 32 + 1); // count-in, two bars, landing note
    CHECK(bench.events.size() == 37 + 2);
    for (const Event& event : bench.events) CHECK(event.runsEnded == 0);
}

TEST_CASE("a playback ends in silence, and the engine renders silence after it") {
    DrillBench bench;
    bench.engine.hear(livelyModel());
    REQUIRE(bench.renderUntil(Kind::playbackEnded));
    const auto end = bench.events.back().sample;
    bench.renderSeconds(0.5);
    for (auto at = end + 4'800; at < bench.sound.size(); ++at) REQUIRE(bench.sound[at] == 0.0F);
}

TEST_CASE("stop ends a playback: its notes fade within 15 ms, and no more pulses are sent") {
    DrillBench bench;
    auto score = livelyModel();
    score.click = false;
    bench.engine.hear(score);
    bench.renderSeconds(1.6);
    const auto pulses = count(bench, Kind::pulse);
    const auto stopped = bench.now();
    bench.stop();
    bench.renderSeconds(0.5);
    CHECK(count(bench, Kind::playbackEnded) == 1);
    CHECK(bench.events.back().sample == stopped);
    CHECK(count(bench, Kind::pulse) == pulses);
    float left = 0;
    for (auto at = stopped + 720; at < bench.sound.size(); ++at) left += std::abs(bench.sound[at]);
    CHECK(left == 0.0F);
}

TEST_CASE("starting a drill ends the playback, and none is played while it runs") {
    DrillBench bench;
    bench.engine.hear(livelyModel());
    bench.renderSeconds(0.3);
    bench.start(quickPlan());
    REQUIRE(bench.renderUntil(Kind::runBegan));
    CHECK(count(bench, Kind::playbackEnded) == 1);
    CHECK(bench.engine.hear(livelyModel()) == 2);
    REQUIRE(bench.renderUntil(Kind::playbackEnded));
    CHECK(bench.events.back().run == 2);
    REQUIRE(bench.renderUntil(Kind::runEnded));
    CHECK(bench.events.back().kind != Kind::pulse);
    // The playback leaves nothing behind in the drill's sound: the same drill alone sounds the same.
    DrillBench alone;
    alone.start(quickPlan());
    alone.renderSeconds(2);
    const auto began = std::ranges::find(bench.events, Kind::started, &Event::kind)->sample;
    bench.renderSeconds(1);
    const auto tail = static_cast<std::ptrdiff_t>(4'800);
    CHECK(std::equal(alone.sound.begin() + tail, alone.sound.begin() + 48'000,
                     bench.sound.begin() + static_cast<std::ptrdiff_t>(began) + tail));
}

TEST_CASE("at most two playbacks wait; those that were played make room again") {
    DrillBench bench;
    CHECK(bench.engine.hear(livelyModel()) == 1);
    CHECK(bench.engine.hear(livelyModel()) == 2);
    CHECK(bench.engine.hear(livelyModel()) == 0);
    bench.renderSeconds(0.1);
    CHECK(bench.engine.hear(livelyModel()) == 3); // the second one reused the first one's slot
    bench.renderSeconds(0.1);
    bench.stop();
    bench.renderSeconds(0.1);
    CHECK(bench.engine.hear(livelyModel()) == 4);
    CHECK(bench.engine.hear(livelyModel()) == 5);
}

TEST_CASE("a playback that is not heard, or whose rate changes, ends") {
    DrillBench bench;
    bench.engine.hear(livelyModel());
    bench.renderSeconds(0.1);
    bench.engine.setHeard(false);
    bench.renderSeconds(0.1);
    CHECK(count(bench, Kind::playbackEnded) == 1);
    bench.engine.hear(livelyModel());
    bench.renderSeconds(0.1);
    bench.engine.prepare({44'100}, 1024);
    bench.renderSeconds(0.1);
    CHECK(count(bench, Kind::playbackEnded) == 2);
}

TEST_CASE("without the click only the count-in clicks; a muted playback only clicks") {
    auto passage = plainPassage({noteAt({1, 1}, {1, 4})});
    passage.music.countInBars = 1;
    auto score = playbackOf(passage, Tempo::bpm(120));
    score.click = false;
    const auto found = stretchesOf(soundOf(score, {48'000}, true), 4'000);
    CHECK(found.size() == 5);
    CHECK(found.back().first == 8 * 24'000);
    Mix mix;
    mix.muted[static_cast<std::size_t>(Layer::playback)] = true;
    PlaybackTrack track(playbackOf(passage, Tempo::bpm(120)), mix);
    track.prepare({48'000}, 512);
    std::vector<float> sound(track.length());
    track.render(sound);
    CHECK(stretchesOf(sound, 4'000).size() == 12);
}

TEST_CASE("chords of many notes with the click never reach full scale") {
    std::vector<Note> chord;
    for (int key = 40; key < 70; ++key) chord.push_back(noteAt({0, 1}, {1, 1}, key));
    for (Note& note : chord) note.articulation.accent = true;
    const auto sound = soundOf(playbackOf(plainPassage(chord), Tempo::bpm(120)), {48'000}, true);
    float highest = 0;
    for (const float value : sound) highest = std::max(highest, std::abs(value));
    CHECK(highest > 0.9F);
    CHECK(highest < 1.0F);
}
