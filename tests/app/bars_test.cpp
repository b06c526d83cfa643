// SPDX-License-Identifier: GPL-3.0-or-later
// Scores on the command line: listed, picked from, checked.
#include "command.h"

#include "journal/passage_file/passage_file.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::test;

namespace {

const std::string ferrywake = PIOLO_SOURCE_DIR "/samples/ferrywake.musicxml";

Ended bars(const Args& more) {
    Args words{"bars", ferrywake};
    words.insert(words.end(), more.begin(), more.end());
    return runPiolo(words);
}

/// The message on standard error, without "piolo: " and the line end.
std::string reported(const Ended& end) {
    return end.err.size() > 8 ? end.err.substr(7, end.err.size() - 8) : end.err;
}

} // namespace

TEST_CASE("piolo bars lists parts, bars, meters and tempi") {
    const Ended end = bars({});
    CHECK(end.code == 0);
    CHECK(end.err == "");
    CHECK(end.out == "Ferrywake\n"
                     "the Marrowgate band, for its spring concert\n"
                     "part 1: Alto Saxophone, 13 bars, 0 to 12, sounds 9 semitones lower\n"
                     "  bar 0: 4/4\n"
                     "tempo in bar 0: 1/4 = 108, sounding 1/4 = 108\n");
}

TEST_CASE("bars picked are printed as the passage that they make") {
    const Ended end = bars({"--part", "Alto Saxophone", "--from", "0", "--to", "1"});
    CHECK(end.code == 0);
    CHECK(end.out == "Alto Saxophone: 1 bar from bar 1, pick-up 1/4\n"
                     "meter 4/4, beat 1/4\n"
                     "tempo 108\n"
                     "subdivision 2\n"
                     "7 notes: onset, length, as written, MIDI number\n"
                     "  0/1 1/8 D5 65\n"
                     "  1/8 1/8 E5 67\n"
                     "  1/4 1/4 F#5 69\n"
                     "  1/2 1/4 D5 65\n"
                     "  3/4 1/4 A4 60\n"
                     "  1/1 1/8 D5 65\n"
                     "  9/8 1/8 E5 67\n");
}

TEST_CASE("a passage file made of picked bars is one that can be imported") {
    const Scratch scratch;
    const std::string out = scratch.path("ferrywake.piolo.json");
    CHECK(bars({"--from", "0", "--to", "4", "--out", out}).code == 0);
    const auto set = journal::readPassageFile(out);
    REQUIRE(set);
    REQUIRE(set->passages.size() == 1);
    CHECK(set->pieces.at(0).name == "Ferrywake");
    CHECK(set->pieces.at(0).instrument == "Alto Saxophone");
    const Passage& passage = set->passages.front();
    CHECK(passage.title.name == "Ferrywake, bars 0 to 4");
    CHECK(passage.title.piece == set->pieces.front().id);
    CHECK(passage.music.pickup == Fraction{1, 4});
    CHECK(passage.music.bars == 4);
    CHECK(passage.tempi.rule.target == Tempo::bpm(108));
    CHECK(passage.tempi.start == Tempo::bpm(54));
    CHECK(passage.notes.size() > 2);
    CHECK(passage.notes.at(0).sounding == 65);
    CHECK(runPiolo({"check", out}).out == "");
}

TEST_CASE("missing parts and bars are reported with the existing ones") {
    CHECK(reported(bars({"--part", "Oboe"})) ==
          "E130: --part: \"Oboe\" is not a part of this score; write the number or the name of one of its 1 "
          "(piolo bars FILE lists them)");
    CHECK(reported(bars({"--from", "13"})) ==
          "E131: --from: \"13\" is not a bar of this part from there on; write a bar from "
          "0 to 12, the earlier one first");
    CHECK(reported(bars({"--from", "5", "--to", "4"})) ==
          "E131: --to: \"4\" is not a bar of this part from there on; write a bar from 5 to 12, the earlier "
          "one first");
    CHECK(bars({"--from", "13"}).code == 2);
    CHECK(reported(bars({"--to", "4"})) == "E103: --from: is missing; add it, for example --from 17");
    CHECK(bars({"--from", "1", "--out", "a.json"}).code == 2);
    CHECK(bars({"--from", "0"}).code == 1);
}

TEST_CASE("piolo check reports every fault of a score, and nothing for a good one") {
    CHECK(runPiolo({"check", ferrywake}).out == "");
    const Scratch scratch;
    const std::string bad = scratch.put(
        "bad.xml", "<score-partwise><part-list><score-part id=\"P1\"/></part-list><part id=\"P1\">\n"
                   "<measure number=\"1\"><attributes><divisions>0</divisions></attributes>\n"
                   "<note><rest/><duration>-1</duration></note></measure></part></score-partwise>");
    const Ended end = runPiolo({"check", bad});
    CHECK(end.code == 1);
    CHECK(
        end.out ==
        "E244: " + bad +
            ":2: the element \"divisions\" has an impossible value: 0; save the score again, or fix it by "
            "hand\n"
            "E245: " +
            bad +
            ":3: the element \"divisions\" is missing in \"note\"; save the score again, or fix it by hand\n"
            "E244: " +
            bad +
            ":3: the element \"duration\" has an impossible value: -1; save the score again, or fix it by "
            "hand\n");
    CHECK(runPiolo({"check", scratch.put("cut.mxl", "PK\x03\x04")}).out.find("E247") == 0);
    CHECK(runPiolo({"check", scratch.path("none.mxl")}).err.find("E301") != std::string::npos);
}
