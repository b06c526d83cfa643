// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"
#include "practice.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::test;

namespace {

/// A practice folder with five bars of the sample score.
struct Band {
    Band() {
        const std::string file = scratch.path("ferrywake.piolo.json");
        runPiolo({"bars", PIOLO_SOURCE_DIR "/samples/ferrywake.musicxml", "--from", "0", "--to", "4", "--out",
                  file});
        REQUIRE(runPiolo({"import", file, "--folder", folder}).code == 0);
    }
    Ended staff(const std::string& out, const Args& more = {}) const {
        Args words{"staff", "Ferrywake, bars 0 to 4", "--folder", folder, "--out", scratch.path(out)};
        words.insert(words.end(), more.begin(), more.end());
        Around bare; // no display
        bare.environment = {
            {"DISPLAY", ""}, {"WAYLAND_DISPLAY", ""}, {"QT_QPA_PLATFORM", ""}, {"XDG_RUNTIME_DIR", ""}};
        return runPiolo(words, bare);
    }
    [[nodiscard]] std::string bytes(const std::string& out) const { return bytesOf(scratch.path(out)); }
    Scratch scratch;
    std::string folder = scratch.path("band");
};

} // namespace

TEST_CASE("a staff is drawn without a display as SVG, PNG or PDF, in outlines that need no font") {
    const Band band;
    for (const char* out : {"a.svg", "a.png", "a.pdf"}) {
        const Ended ended = band.staff(out);
        CHECK(ended.err == "");
        CHECK(ended.out == "");
        CHECK(ended.code == 0);
    }
    CHECK(band.bytes("a.png").starts_with("\x89PNG"));
    CHECK(band.bytes("a.pdf").starts_with("%PDF"));
    CHECK(band.bytes("a.pdf").find("/FontFile") == std::string::npos);
    CHECK(band.bytes("a.svg").find("<title>Ferrywake, bars 0 to 4</title>") != std::string::npos);
    CHECK(band.bytes("a.svg").find("<text") == std::string::npos);
    CHECK(band.bytes("a.svg").find("<path") != std::string::npos);
}

TEST_CASE("a staff is as wide as requested, and as tall as its music") {
    const Band band;
    CHECK(band.staff("a.svg", {"--width", "400"}).code == 0);
    CHECK(band.bytes("a.svg").find("viewBox=\"0 0 400 ") != std::string::npos);
    CHECK(band.staff("b.svg", {"--width", "400", "--space", "6"}).code == 0);
    CHECK(band.bytes("a.svg") != band.bytes("b.svg"));
    CHECK(band.staff("c.svg", {"--width", "400", "--space", "6"}).code == 0);
    CHECK(band.bytes("b.svg") == band.bytes("c.svg"));
}

TEST_CASE("a staff that cannot be drawn is reported in one line and writes nothing") {
    const Band band;
    CHECK(band.staff("a.bmp").code == 2);
    CHECK(band.staff("a.svg", {"--width", "100"}).code == 2);
    CHECK(band.staff("a.svg", {"--space", "2.5"}).code == 2);
    CHECK_FALSE(std::filesystem::exists(band.scratch.path("a.svg")));
    const Scratch scratch;
    scratch.put("folder/journal/a-2026.jsonl", lines({defined(1, {1, 1}, "Letter C")}));
    const Ended ended =
        runPiolo({"staff", "Letter C", "--folder", scratch.path("folder"), "--out", scratch.path("a.svg")});
    CHECK(ended.code == 1);
    CHECK(ended.err.starts_with("piolo: E265: "));
}
