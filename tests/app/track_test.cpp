// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"
#include "midi_bytes.h"
#include "wav_bytes.h"

#include <cmath>
#include <doctest/doctest.h>
#include <set>

using namespace piolo::test;

namespace {

struct Track {
    WavSound wav;
    MidiSong midi;
};

Track render(const Args& options) {
    const Scratch scratch;
    Track track;
    for (const char* name : {"t.wav", "t.mid"}) {
        Args words{"track", "--voice", "impulse", "--out", scratch.path(name)};
        words.insert(words.end(), options.begin(), options.end());
        const Ended end = runPiolo(words);
        CHECK(end.out == "");
        CHECK(end.err == "");
        REQUIRE(end.code == 0);
    }
    return {readSound(scratch.path("t.wav")), readSong(scratch.path("t.mid"))};
}

// A MIDI tempo is a whole number of microseconds per quarter: it may be off by half a microsecond per
// quarter, and by half a sample in the WAV.
void checkSameOnsets(const Track& track) {
    const auto onsets = track.wav.onsets();
    REQUIRE(onsets.size() == track.midi.notes.size());
    for (std::size_t i = 0; i < onsets.size(); ++i) {
        const std::uint64_t tick = track.midi.notes[i].tick;
        const double quarters = static_cast<double>(tick) / track.midi.division;
        const double heard = static_cast<double>(onsets[i].sample) / track.wav.rate;
        REQUIRE(std::abs(track.midi.seconds(tick) - heard) <=
                quarters * 0.5e-6 + 0.5 / track.wav.rate + 1e-9);
    }
    const double end = static_cast<double>(track.wav.samples.size()) / track.wav.rate;
    const double quarters = static_cast<double>(track.midi.length) / track.midi.division;
    CHECK(std::abs(track.midi.seconds(track.midi.length) - end) <=
          quarters * 0.5e-6 + 0.5 / track.wav.rate + 1e-9);
}

} // namespace

// By hand: 60, 64, 66 (the last step shortened); two runs at each of (1 count-in bar, 2 bars).
TEST_CASE("a track climbs from start to target, the last step shortened, and ends after the runs there") {
    const Track track = render(
        {"--start", "60", "--target", "66", "--climb", "4", "--bars", "2", "--runs", "2", "--rate", "8000"});
    const auto onsets = track.wav.onsets();
    REQUIRE(onsets.size() == 3 * 2 * 3 * 4);
    std::size_t i = 0;
    double begin = 0;
    for (const double tempo : {60.0, 64.0, 66.0}) {
        for (int beat = 0; beat < 24; ++beat, ++i) {
            CHECK(onsets[i].sample ==
                  static_cast<std::uint64_t>(std::floor(begin + beat * 480'000 / tempo + 0.5)));
            CHECK(onsets[i].level == (beat % 4 == 0 ? 1.0F : 0.75F));
        }
        begin += 24 * 480'000 / tempo;
    }
    CHECK(track.wav.samples.size() == static_cast<std::size_t>(std::floor(begin + 0.5)));
    checkSameOnsets(track);
}

// Microseconds per quarter: 60000000 / tempo (Standard MIDI File 1.0, FF 51).
TEST_CASE("the MIDI file has the same onsets, tempi in quarters, and room for septuplets") {
    const Track track = render({"--start", "60", "--target", "132", "--climb", "36", "--bars", "1", "--runs",
                                "1", "--count-in", "0", "--subdivision", "7"});
    CHECK(track.midi.format == 1);
    CHECK(track.midi.division % 7 == 0);
    CHECK(track.midi.meter == std::string("\x04\x02\x18\x08", 4));
    REQUIRE(track.midi.tempi.size() == 3);
    CHECK(track.midi.tempi[0].microsPerQuarter == 0x0F4240);
    CHECK(track.midi.tempi[1].microsPerQuarter == 625'000);
    CHECK(track.midi.tempi[2].microsPerQuarter == 0x06EF91);
    for (std::size_t i = 0; i < track.midi.notes.size(); ++i)
        CHECK(track.midi.notes[i].tick * 7 == i * static_cast<std::uint64_t>(track.midi.division));
    checkSameOnsets(track);
}

TEST_CASE("80 dotted quarters are 120 quarters, and 90 halves are 180") {
    const Track compound = render({"--start", "80", "--target", "80", "--climb", "4", "--bars", "2", "--runs",
                                   "1", "--meter", "6/8", "--subdivision", "3"});
    REQUIRE(compound.midi.tempi.size() == 1);
    CHECK(compound.midi.tempi[0].microsPerQuarter == 500'000);
    CHECK(compound.midi.meter == std::string("\x06\x03\x24\x08", 4));
    checkSameOnsets(compound);
    const Track halves = render({"--start", "90", "--target", "90", "--climb", "4", "--bars", "2", "--runs",
                                 "1", "--beat", "1/2", "--subdivision", "6"});
    CHECK(halves.midi.tempi.at(0).microsPerQuarter == 333'333);
    checkSameOnsets(halves);
}

TEST_CASE("every subdivision of every beat keeps its onsets in MIDI") {
    const std::vector<Args> beats{{"--meter", "4/4", "--beat", "1/4"},
                                  {"--meter", "2/2", "--beat", "1/2"},
                                  {"--meter", "9/8", "--beat", "3/8"},
                                  {"--meter", "7/8", "--beat", "1/8"},
                                  {"--meter", "6/4", "--beat", "3/4"}};
    for (const Args& beat : beats) {
        for (int n = 1; n <= 8; ++n) {
            Args options{"--start",       "71.3",
                         "--target",      "75",
                         "--climb",       "2",
                         "--bars",        "1",
                         "--runs",        "2",
                         "--rate",        "44100",
                         "--subdivision", std::to_string(n)};
            options.insert(options.end(), beat.begin(), beat.end());
            checkSameOnsets(render(options));
        }
    }
}

TEST_CASE("every swing keeps its onsets in MIDI, even one that does not fit the usual division") {
    for (const char* swing : {"3:2", "2:1", "3:1", "11:9", "29:21", "99:97"})
        for (const char* n : {"2", "4"}) {
            CAPTURE(swing);
            const Track track = render({"--start", "71.3", "--target", "75", "--climb", "2", "--bars", "2",
                                        "--runs", "2", "--subdivision", n, "--swing", swing});
            CHECK(track.midi.division <= 32'767);
            checkSameOnsets(track);
            // The second note of a pair is exact in ticks: long / (long + short).
            const auto pair = static_cast<std::uint64_t>(track.midi.division) * 2 / std::stoul(n);
            const std::string text = swing;
            const auto longer = std::stoul(text);
            const auto shorter = std::stoul(text.substr(text.find(':') + 1));
            const auto first = track.midi.notes.at(4).tick; // the count-in has four
            CHECK((track.midi.notes.at(5).tick - first) * (longer + shorter) == pair * longer);
        }
}

TEST_CASE("a pattern leaves the same clicks out of WAV and MIDI, and its waits are in both") {
    for (const char* on : {"beats", "downbeats", "backbeats", "offbeats"}) {
        CAPTURE(on);
        const Track track = render(
            {"--start",        "100", "--target",   "104", "--climb",       "4",
             "--bars",         "6",   "--runs",     "2",   "--subdivision", "2",
             "--click",        on,    "--swing",    "2:1", "--accents",     "strong,silent,group,plain",
             "--bars-on",      "2",   "--bars-off", "1",   "--silent-bars", "20",
             "--left-out",     "20",  "--seed",     "5",   "--breath",      "2:3:1,5:1:2",
             "--breath-below", "104"});
        checkSameOnsets(track);
        CHECK(track.midi.notes.size() < 4 * (4 + 6 * 4 * 2) / 2);
        // Two runs at 100 with three beats of waiting, two at 104 without.
        const double beats = 2 * (4 + 24 + 3) / 100.0 + 2 * (4 + 24) / 104.0;
        CHECK(track.wav.samples.size() == static_cast<std::size_t>(std::floor(beats * 60 * 48'000 + 0.5)));
    }
}

TEST_CASE("in MIDI, count-in, downbeat, beat and subdivision differ") {
    const Track track = render({"--start", "60", "--target", "60", "--climb", "4", "--bars", "1", "--runs",
                                "1", "--subdivision", "2", "--rate", "8000"});
    REQUIRE(track.midi.notes.size() == 4 + 8);
    std::set<std::pair<int, int>> kinds;
    for (const std::size_t i : {0U, 4U, 5U, 6U})
        kinds.insert({track.midi.notes[i].key, track.midi.notes[i].velocity});
    CHECK(kinds.size() == 4);
    for (const MidiNote& note : track.midi.notes) CHECK(note.channel == 9);
}
