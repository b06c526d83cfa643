// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include <doctest/doctest.h>
#include <filesystem>

using namespace piolo;
using namespace piolo::test;

namespace {

const std::string sample = PIOLO_SOURCE_DIR "/samples/ferrywake.musicxml";
const std::string title = "Ferrywake, bars 0 to 4";

/// A practice folder with bars of the sample score.
std::string band(const Scratch& scratch) {
    const std::string file = scratch.path("ferrywake.piolo.json");
    REQUIRE(runPiolo({"bars", sample, "--from", "0", "--to", "4", "--out", file}).code == 0);
    REQUIRE(runPiolo({"import", file, "--folder", scratch.path("band")}).code == 0);
    return scratch.path("band");
}

/// What `piolo bars` prints for bars 0 to 4, except for the line that names the score.
std::string passageIn(const std::string& score) {
    const Ended ended = runPiolo({"bars", score, "--from", "0", "--to", "4"});
    CHECK(ended.err == "");
    return ended.out;
}

} // namespace

TEST_CASE("bars picked from a score, exported as a score and picked again are the same") {
    const Scratch scratch;
    const std::string out = scratch.path("again.musicxml");
    const Ended ended = runPiolo({"export", title, "--folder", band(scratch), "--out", out});
    CHECK(ended.out == "");
    CHECK(ended.err == "");
    CHECK(ended.code == 0);
    CHECK(passageIn(out) == passageIn(sample));
    CHECK(runPiolo({"check", out}).code == 0);
    const std::string first = bytesOf(out);
    CHECK(runPiolo({"export", title, "--folder", scratch.path("band"), "--out", out}).code == 0);
    CHECK(bytesOf(out) == first);
}

TEST_CASE("a passage without notes cannot be a score, and nothing is written") {
    const Scratch scratch;
    const std::string folder = band(scratch);
    const std::string file = scratch.put(
        "plain.piolo.json",
        R"({"v":1,"pieces":[],"passages":[{"id":"11111111111111111111111111111111","title":{"name":"Trio"},)"
        R"("music":{"meter":"4/4","beat":"1/4","subdivision":1,"firstBar":1,"bars":4,"landing":true,"countInBars":1,)"
        R"("breathBeats":2},"tempi":{"start":60000,"target":96000,"floor":40000,"step":"bpm","drop":4,"climb":2,)"
        R"("cleanRuns":5}}]})");
    REQUIRE(runPiolo({"import", file, "--folder", folder}).code == 0);
    const Ended ended =
        runPiolo({"export", "Trio", "--folder", folder, "--out", scratch.path("trio.musicxml")});
    CHECK(ended.code == 1);
    CHECK(ended.err.starts_with("piolo: E265: "));
    CHECK_FALSE(std::filesystem::exists(scratch.path("trio.musicxml")));
}
