// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"
#include "core/music/pitch_text.h"
#include "midi_bytes.h"
#include "score/pick/excerpt.h"
#include "score/read/score_file.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::test;

namespace {

Ended scale(Args more) {
    Args words{"scale", "--key", "E flat", "--instrument", "alto saxophone"};
    words.insert(words.end(), more.begin(), more.end());
    return runPiolo(words);
}

} // namespace

TEST_CASE("a scale is listed with its key, its concert key, its end and its notes") {
    const Ended ended = scale({"--subdivision", "5"});
    CHECK(ended.code == 0);
    CHECK(
        ended.out ==
        "scale: E flat major, two octaves, quintuplets\n"
        "instrument: alto saxophone\n"
        "concert: G flat\n"
        "signature: 3 flats\n"
        "from: D4\n"
        "to: Eb6\n"
        "bars: 2\n"
        "ends: turn below the last tonic: 2 notes\n"
        "notes: Eb4 F4 G4 Ab4 Bb4 C5 D5 Eb5 F5 G5 Ab5 Bb5 C6 D6 Eb6 D6 C6 Bb5 Ab5 G5 F5 Eb5 D5 C5 Bb4 Ab4 "
        "G4 F4 Eb4 D4 Eb4\n"
        "sounding: 54 56 58 59 61 63 65 66 68 70 71 73 75 77 78 77 75 73 71 70 68 66 65 63 61 59 58 56 54 53 "
        "54\n");
}

TEST_CASE("a scale above the range says altissimo; the player's own highest note takes it in") {
    const Args high{"--key", "F#"};
    CHECK(runPiolo({"scale", "--key", "F#", "--instrument", "alto saxophone"})
              .out.find("to: F#6 (altissimo: above F6)\n") != std::string::npos);
    CHECK(runPiolo({"scale", "--key", "F#", "--instrument", "alto saxophone", "--highest", "F#6"})
              .out.find("to: F#6\n") != std::string::npos);
}

TEST_CASE("an invalid key, kind, instrument, note or file is reported in one line with the valid ones") {
    const auto reported = [](const Args& words, const char* text) {
        const Ended ended = runPiolo(words);
        CHECK(ended.code == 2);
        CHECK(ended.out == "");
        CAPTURE(ended.err);
        CHECK(ended.err.find(text) != std::string::npos);
    };
    reported({"scale", "--key", "H", "--instrument", "oboe"}, "E126: --key: \"H\" is not a valid key");
    reported({"scale", "--key", "C", "--instrument", "kazoo"}, "piccolo, flute, oboe");
    reported({"scale", "--key", "C", "--instrument", "oboe", "--kind", "loud"}, "harmonic minor");
    reported({"scale", "--key", "C", "--instrument", "oboe", "--range", "three octaves"}, "whole range");
    reported({"scale", "--key", "C", "--instrument", "oboe", "--lowest", "A"}, "E127: --lowest");
    reported({"scale", "--key", "C", "--instrument", "oboe", "--subdivision", "8"}, "--subdivision");
    reported({"scale", "--key", "C", "--instrument", "oboe", "--out", "x.ogg"}, "--out");
    reported({"scale", "--key", "C", "--instrument", "oboe", "--lowest", "D5", "--highest", "E5"},
             "E128: C major, two octaves, quarters has no tonic from D5 to E5");
    reported({"scale", "--instrument", "oboe"}, "--key");
}

TEST_CASE("a scale as MIDI has each of its notes at its part of the beat") {
    const Scratch scratch;
    const std::string out = scratch.path("scale.mid");
    CHECK(scale({"--subdivision", "5", "--out", out}).code == 0);
    const MidiSong song = readSong(out);
    REQUIRE(song.notes.size() == 31);
    REQUIRE(song.division % 5 == 0);
    for (std::size_t note = 0; note < 31; ++note)
        CHECK(song.notes[note].tick == note * static_cast<std::uint64_t>(song.division) / 5);
    CHECK(song.notes[0].key == 54);
    CHECK(song.notes[14].key == 78);
    CHECK(song.tempi.at(0).microsPerQuarter == 1'000'000);
}

TEST_CASE("a scale as a score is read back with its key, its transposition and its notes") {
    const Scratch scratch;
    const std::string out = scratch.path("scale.musicxml");
    const Ended ended = scale({"--kind", "altered", "--subdivision", "5", "--tempo", "72.5", "--out", out});
    CHECK(ended.err == "");
    CHECK(ended.code == 0);
    const auto reading = score::readScoreFile(out);
    REQUIRE(reading.faults.empty());
    CHECK(reading.score.title == "E flat altered, two octaves, quintuplets");
    CHECK(reading.score.parts.at(0).name == "alto saxophone");
    CHECK(reading.score.parts[0].bars.at(0).fifths == 0);
    CHECK(reading.score.parts[0].bars[0].transposition.semitones() == -9);
    const auto made = score::excerpt(reading.score, 0, {0, reading.score.parts[0].bars.size() - 1});
    REQUIRE(made);
    CHECK(made->tempo == Tempo::fromThousandths(72'500));
    std::string notes = "notes:";
    for (const Note& note : made->notes)
        if (!note.tiedBefore) notes += ' ' + pitchText(note.written);
    CHECK(scale({"--kind", "altered", "--subdivision", "5"}).out.find(notes + '\n') != std::string::npos);
}

TEST_CASE("a scale on a staff is a picture in outlines, as SVG, PNG or PDF") {
    const Scratch scratch;
    for (const char* name : {"a.svg", "a.png", "a.pdf"}) {
        const Ended ended = scale({"--subdivision", "7", "--out", scratch.path(name)});
        CHECK(ended.err == "");
        CHECK(ended.out == "");
        CHECK(ended.code == 0);
    }
    const std::string svg = bytesOf(scratch.path("a.svg"));
    CHECK(svg.find("<title>E flat major, two octaves, septuplets</title>") != std::string::npos);
    CHECK(svg.find("<text") == std::string::npos);
    CHECK(bytesOf(scratch.path("a.png")).starts_with("\x89PNG"));
    CHECK(bytesOf(scratch.path("a.pdf")).starts_with("%PDF"));
}
