// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::test;

namespace {

/// A practice folder with two bars of the sample score, in 4/4 with a pick-up of a quarter.
struct Band {
    Band() {
        const std::string file = scratch.path("ferrywake.piolo.json");
        runPiolo({"bars", PIOLO_SOURCE_DIR "/samples/ferrywake.musicxml", "--from", "0", "--to", "2", "--out",
                  file});
        REQUIRE(runPiolo({"import", file, "--folder", folder}).code == 0);
    }
    Ended model(Args more) const {
        Args words{"model", "Ferrywake, bars 0 to 2", "--folder", folder};
        words.insert(words.end(), more.begin(), more.end());
        return runPiolo(words);
    }
    Scratch scratch;
    std::string folder = scratch.path("band");
};

} // namespace

TEST_CASE(
    "a model lasts its count-in, its bars and its landing beat, and a tenth of a second in which it fades") {
    const Band band;
    const std::string out = band.scratch.path("model.wav");
    const Ended ended = band.model({"--tempo", "97.003", "--count-in", "1", "--rate", "44100", "--out", out});
    CHECK(ended.err == "");
    CHECK(ended.code == 0);
    // A bar, the next bar up to the pick-up, the pick-up, two bars, the landing beat: 17 beats.
    const auto exact = static_cast<std::size_t>(17.0 * 60'000 * 44'100 / 97'003 + 0.5) + 4'410;
    CHECK(bytesOf(out).size() == 58 + 4 * exact);
}

TEST_CASE("the passage's own tempo and count-in are used if none are given") {
    const Band band;
    const std::string out = band.scratch.path("model.wav");
    CHECK(band.model({"--out", out}).code == 0);
    const std::string same = band.scratch.path("same.wav");
    CHECK(band.model({"--tempo", "54", "--count-in", "1", "--rate", "48000", "--out", same}).code == 0);
    CHECK(bytesOf(out) == bytesOf(same));
    const std::string quiet = band.scratch.path("quiet.wav");
    CHECK(band.model({"--no-click", "--out", quiet}).code == 0);
    CHECK(bytesOf(quiet).size() == bytesOf(out).size());
    CHECK(bytesOf(quiet) != bytesOf(out));
}

TEST_CASE("a playback that cannot be made is reported in one line and writes nothing") {
    const Band band;
    const std::string out = band.scratch.path("model.wav");
    CHECK(band.model({"--out", band.scratch.path("model.ogg")}).code == 2);
    CHECK(band.model({"--tempo", "9", "--out", out}).code == 2);
    CHECK(band.model({"--count-in", "5", "--out", out}).code == 2);
    CHECK(band.model({}).code == 2);
    CHECK(runPiolo({"model", "--folder", band.folder, "--out", out}).code == 2);
    CHECK(runPiolo({"model", "Trio", "--folder", band.folder, "--out", out})
              .err.starts_with("piolo: E117: PASSAGE: "));
    const std::string file = band.scratch.put(
        "plain.piolo.json",
        R"({"v":1,"pieces":[],"passages":[{"id":"11111111111111111111111111111111","title":{"name":"Trio"},)"
        R"("music":{"meter":"4/4","beat":"1/4","subdivision":1,"firstBar":1,"bars":4,"landing":true,"countInBars":1,)"
        R"("breathBeats":2},"tempi":{"start":60000,"target":96000,"floor":40000,"step":"bpm","drop":4,"climb":2,)"
        R"("cleanRuns":5}}]})");
    REQUIRE(runPiolo({"import", file, "--folder", band.folder}).code == 0);
    const Ended ended = runPiolo({"model", "Trio", "--folder", band.folder, "--out", out});
    CHECK(ended.code == 1);
    CHECK(ended.err ==
          "piolo: E265: " + band.folder +
              ": the notes of \"Trio\" are not known; pick its bars from a score in MusicXML, with piolo "
              "bars or in the window\n");
    CHECK(band.scratch.names() ==
          std::vector<std::string>{"band", "ferrywake.piolo.json", "plain.piolo.json"});
}
