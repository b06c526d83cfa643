// SPDX-License-Identifier: GPL-3.0-or-later
#include "../time/exact.h"
#include "playback_bench.h"

#include <doctest/doctest.h>

#include <array>
#include <cstring>

using namespace piolo;
using namespace piolo::engine;

namespace {

/// The exact sample of a moment in beats, computed independently of the engine.
std::uint64_t sampleAt(std::uint64_t above, std::uint64_t below, Tempo tempo, SampleRate rate) {
    return nearestSample(0, above, below, tempo, rate);
}

constexpr SampleRate usualRate{48'000};

bool sameBits(const std::vector<float>& a, const std::vector<float>& b) {
    return a.size() == b.size() && std::memcmp(a.data(), b.data(), a.size() * sizeof(float)) == 0;
}

} // namespace

TEST_CASE("every note begins on the exact sample of its place, whatever the tempo and the rate") {
    // The beat is a quarter: onset n/d of a whole note is at beat 4n/d.
    const std::array<Fraction, 9> onsets{Fraction{0, 1}, {1, 12},  {5, 28}, {2, 7}, {3, 8},
                                         {9, 16},        {31, 32}, {4, 3},  {13, 7}};
    std::vector<Note> notes;
    for (const Fraction onset : onsets) notes.push_back(noteAt(onset, {1, 96}, 81));
    for (const int hertz : {44'100, 48'000, 192'000})
        for (const std::int64_t thousandths : {33'333, 61'001, 97'003, 119'999}) {
            CAPTURE(hertz);
            CAPTURE(thousandths);
            const auto tempo = Tempo::clampedThousandths(thousandths);
            const auto found = stretchesOf(soundOf(playbackOf(plainPassage(notes), tempo), {hertz}));
            REQUIRE(found.size() == onsets.size());
            for (std::size_t i = 0; i < onsets.size(); ++i)
                CHECK(found[i].first == sampleAt(4ULL * static_cast<std::uint64_t>(onsets[i].numerator),
                                                 static_cast<std::uint64_t>(onsets[i].denominator), tempo,
                                                 {hertz}));
        }
}

TEST_CASE("a pick-up and a count-in come before: the first note follows them exactly") {
    auto passage = plainPassage({noteAt({0, 1}, {1, 16}), noteAt({1, 8}, {1, 16})});
    passage.music.pickup = {1, 8};
    passage.music.countInBars = 1;
    const auto tempo = Tempo::clampedThousandths(77'777);
    const auto found = stretchesOf(soundOf(playbackOf(passage, tempo), usualRate));
    REQUIRE(found.size() == 2);
    // A bar, and of the next one the part before the half-beat pick-up: 7.5 beats. Then the downbeat.
    CHECK(found[0].first == sampleAt(15, 2, tempo, usualRate));
    CHECK(found[1].first == sampleAt(8, 1, tempo, usualRate));
}

TEST_CASE("a tongued note sounds seven eighths of its length, a staccato one half, a tenuto one all of it") {
    auto staccato = noteAt({1, 4}, {1, 4});
    staccato.articulation.staccato = true;
    auto tenuto = noteAt({3, 4}, {1, 8});
    tenuto.articulation.tenuto = true;
    const auto tempo = Tempo::bpm(60);
    const auto found = stretchesOf(
        soundOf(playbackOf(plainPassage({noteAt({0, 1}, {1, 4}), staccato, tenuto}), tempo), usualRate));
    REQUIRE(found.size() == 3);
    const std::uint64_t fade = 720; // 15 ms
    // The last sample of the fade is silence.
    CHECK(found[0].last - found[0].first + 2 == 48'000 * 7 / 8 + fade);
    CHECK(found[1].last - found[1].first + 2 == 48'000 / 2 + fade);
    CHECK(found[2].last - found[2].first + 2 == 48'000 / 2 + fade);
}

TEST_CASE("slurred notes follow each other without a gap, and the last of the slur is let go") {
    auto first = noteAt({0, 1}, {1, 4}, 60);
    first.articulation.slurBegins = true;
    auto last = noteAt({1, 2}, {1, 4}, 64);
    last.articulation.slurEnds = true;
    const auto score = playbackOf(
        plainPassage({first, noteAt({1, 4}, {1, 4}, 62), last, noteAt({3, 4}, {1, 4}, 65)}), Tempo::bpm(60));
    REQUIRE(score.notes.size() == 4);
    CHECK(score.notes[0].end == score.notes[1].onset);
    CHECK(score.notes[1].end == score.notes[2].onset);
    CHECK(score.notes[2].end == PlaybackMoment{23, 8}); // 2 + 7/8 beats
    CHECK(stretchesOf(soundOf(score, usualRate)).size() == 2);
}

TEST_CASE("tied notes sound as the one note that they are") {
    auto from = noteAt({1, 8}, {1, 8});
    from.tiedAfter = true;
    auto over = noteAt({1, 4}, {1, 3});
    over.tiedBefore = over.tiedAfter = true;
    auto to = noteAt({7, 12}, {1, 6});
    to.tiedBefore = true;
    const auto tempo = Tempo::clampedThousandths(97'003);
    const auto tied = soundOf(playbackOf(plainPassage({from, over, to}), tempo), usualRate);
    const auto whole = soundOf(playbackOf(plainPassage({noteAt({1, 8}, {5, 8})}), tempo), usualRate);
    CHECK(sameBits(tied, whole));
    // A tied note whose first part is missing is attacked.
    CHECK(playbackOf(plainPassage({to}), tempo).notes.size() == 1);
}

TEST_CASE("notes swing with the click, and wait where it waits") {
    auto passage = plainPassage(
        {noteAt({0, 1}, {1, 8}), noteAt({1, 8}, {1, 8}), noteAt({3, 16}, {1, 16}), noteAt({1, 1}, {1, 8})});
    passage.music.subdivision = 2;
    passage.click.swing = {2, 1};
    passage.click.breaths = {{2, 1, 2}};
    const auto score = playbackOf(passage, Tempo::bpm(90));
    REQUIRE(score.notes.size() == 4);
    CHECK(score.notes[1].onset == PlaybackMoment{2, 3});
    CHECK(score.notes[2].onset == PlaybackMoment{5, 6}); // halfway through the short pulse
    CHECK(score.notes[3].onset == PlaybackMoment{6, 1}); // two beats late
}

TEST_CASE("what ends where the click waits ends before the wait") {
    auto held = noteAt({3, 4}, {1, 4});
    held.articulation.tenuto = true;
    auto passage = plainPassage({held, noteAt({1, 1}, {1, 4})});
    passage.click.breaths = {{2, 1, 2}};
    const auto score = playbackOf(passage, Tempo::bpm(90));
    REQUIRE(score.notes.size() == 2);
    CHECK(score.notes[0].end == PlaybackMoment{4, 1});
    CHECK(score.notes[1].onset == PlaybackMoment{6, 1});
}

TEST_CASE("the landing note sounds for its beat; notes that begin after the end are left out") {
    auto landing = noteAt({2, 1}, {1, 1});
    landing.articulation.tenuto = true;
    auto passage = plainPassage({noteAt({0, 1}, {1, 4}), landing, noteAt({9, 4}, {1, 4})});
    CHECK(playbackOf(passage, Tempo::bpm(90)).notes.size() == 1);
    passage.music.landing = true;
    const auto score = playbackOf(passage, Tempo::bpm(90));
    REQUIRE(score.notes.size() == 2);
    CHECK(score.notes[1].onset == PlaybackMoment{8, 1});
    CHECK(score.notes[1].end == PlaybackMoment{9, 1});
}

TEST_CASE("a passage without notes or without an end has no playback") {
    CHECK(playbackOf(plainPassage(), Tempo::bpm(90)).notes.empty());
    auto open = plainPassage({noteAt({0, 1}, {1, 4})});
    open.music.bars = 0;
    CHECK(playbackOf(open, Tempo::bpm(90)).notes.empty());
}

TEST_CASE("parts of a beat that are too fine are rounded to the nearest with denominator two to the 24th") {
    const auto score =
        playbackOf(plainPassage({noteAt({999'999'998, 999'999'999}, {1, 999'999'999})}), Tempo::bpm(90));
    REQUIRE(score.notes.size() == 1);
    const auto& onset = score.notes.front().onset;
    const double beats = static_cast<double>(onset.count) / onset.perBeat;
    CHECK(std::abs(beats - 4 * (1 - 1e-9)) < 6e-8);
}
