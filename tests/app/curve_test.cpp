// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"
#include "practice.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;
using namespace piolo::test;

namespace {

const Id letterC{1, 1};
const std::string id = "00000000000000010000000000000001";

std::string practice(const Scratch& scratch) {
    scratch.put("folder/journal/a-2026.jsonl",
                lines({defined(1, letterC, "Letter C, \"tutti\""), run(2, letterC, 60, Mark::clean),
                       run(3, letterC, 60, Mark::clean), run(4, letterC, 64, Mark::missed),
                       fact(5, TempoFact{letterC, Tempo::bpm(62), Reason::hand}),
                       run(6, letterC, 62, Mark::voided), run(7, letterC, 64, Mark::clean, RunKind::attempt),
                       defined(8, {1, 2}, "Trio"), defined(9, {1, 3}, "Trio")}));
    return scratch.path("folder");
}

Ended curve(const std::string& passage, const std::string& folder, const std::string& out,
            const Args& more = {}) {
    Args words{"curve", passage, "--folder", folder, "--out", out};
    words.insert(words.end(), more.begin(), more.end());
    Around bare; // no display
    bare.environment = {
        {"DISPLAY", ""}, {"WAYLAND_DISPLAY", ""}, {"QT_QPA_PLATFORM", ""}, {"XDG_RUNTIME_DIR", ""}};
    return runPiolo(words, bare);
}

} // namespace

TEST_CASE("the CSV has every run, try and set tempo with the streak after it") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const std::string out = scratch.path("c.csv");
    for (const std::string& passage : {std::string("Letter C, \"tutti\""), id}) {
        const Ended end = curve(passage, folder, out);
        CHECK(end.err == "");
        REQUIRE(end.code == 0);
        CHECK(bytesOf(out) ==
              "time,date,kind,tempo,mark,streak_after,id\n"
              "2026-03-01T00:02:00.000+00:00,2026-03-01,run,60,clean,1,00000000000000090000000000000002\n"
              "2026-03-01T00:03:00.000+00:00,2026-03-01,run,60,clean,0,00000000000000090000000000000003\n"
              "2026-03-01T00:04:00.000+00:00,2026-03-01,run,64,missed,0,00000000000000090000000000000004\n"
              "2026-03-01T00:05:00.000+00:00,2026-03-01,tempo,62,,0,00000000000000090000000000000005\n"
              "2026-03-01T00:06:00.000+00:00,2026-03-01,run,62,void,0,00000000000000090000000000000006\n"
              "2026-03-01T00:07:00.000+00:00,2026-03-01,try,64,clean,0,00000000000000090000000000000007\n");
    }
}

TEST_CASE("the pictures are drawn without a display, in the requested size, the same each time") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    for (const char* name : {"c.svg", "d.svg", "c.png", "d.png"}) {
        const Ended end = curve(id, folder, scratch.path(name), {"--size", "400x200"});
        CHECK(end.err == "");
        REQUIRE(end.code == 0);
    }
    const std::string svg = bytesOf(scratch.path("c.svg"));
    CHECK(svg.find("<svg") != std::string::npos);
    CHECK(svg.find("viewBox=\"0 0 400 200\"") != std::string::npos);
    CHECK(svg.find("Letter C, &quot;tutti&quot;") != std::string::npos);
    CHECK(svg == bytesOf(scratch.path("d.svg")));
    // PNG: width and height are big-endian at bytes 16 and 20 (ISO/IEC 15948, IHDR).
    const std::string png = bytesOf(scratch.path("c.png"));
    CHECK(png.starts_with("\x89PNG\r\n\x1a\n"));
    CHECK(png.substr(16, 8) == std::string("\0\0\x01\x90\0\0\0\xc8", 8));
    CHECK(png == bytesOf(scratch.path("d.png")));
}

TEST_CASE("several passages are in one picture, by runs or days, also as a PDF") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const char* const other = "00000000000000010000000000000002";
    for (const char* name : {"c.svg", "d.png", "e.pdf"}) {
        const Ended end = curve(id, folder, scratch.path(name), {"--by", "days", "--size", "400x200", other});
        CHECK(end.err == "");
        REQUIRE(end.code == 0);
    }
    const std::string svg = bytesOf(scratch.path("c.svg"));
    CHECK(svg.find("viewBox=\"0 0 400 200\"") != std::string::npos);
    CHECK(svg.find("1 Mar") != std::string::npos);
    // ISO 32000-1: a PDF's header and MediaBox; 400 x 200 pixels of 1/96 inch are 300 x 150 points.
    const std::string pdf = bytesOf(scratch.path("e.pdf"));
    CHECK(pdf.starts_with("%PDF-"));
    CHECK(pdf.find("/MediaBox [0 0 300.000000 150.000000]") != std::string::npos);
    CHECK(curve(id, folder, scratch.path("c.svg"), {"--by", "weeks"}).code == 2);
}

TEST_CASE("the rows of several passages name theirs; one named twice counts once") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const std::string out = scratch.path("c.csv");
    REQUIRE(curve(id, folder, out, {"00000000000000010000000000000002", id}).code == 0);
    const std::string csv = bytesOf(out);
    CHECK(csv.starts_with("passage,time,date,kind,tempo,mark,streak_after,id\n" + std::string(id) +
                          ",2026-03-01T00:02:00.000+00:00,2026-03-01,run,60,clean,1,"));
    CHECK(std::count(csv.begin(), csv.end(), '\n') == 7);
}

TEST_CASE("a title of two passages lists their ids, with exit 2") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const Ended end = curve("Trio", folder, scratch.path("c.csv"));
    CHECK(end.code == 2);
    CHECK(end.err ==
          "piolo: E118: PASSAGE: \"Trio\" is the title of more than one passage; give an id instead: "
          "00000000000000010000000000000002, 00000000000000010000000000000003\n");
    CHECK(scratch.names() == std::vector<std::string>{"folder"});
}

TEST_CASE("an unknown passage or folder is reported and nothing is written") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const Ended passage = curve("Letter D", folder, scratch.path("c.csv"));
    CHECK(passage.code == 2);
    CHECK(passage.err == "piolo: E117: PASSAGE: no passage has the id or title \"Letter D\"; check the "
                         "spelling and the folder\n");
    const std::string missing = scratch.path("missing");
    const Ended nowhere = curve(id, missing, scratch.path("c.csv"));
    CHECK(nowhere.code == 1);
    CHECK(nowhere.err ==
          "piolo: E301: " + missing +
              ": cannot be read (No such file or directory); check the name and its permissions\n");
    const std::string file = folder + "/journal/a-2026.jsonl";
    const Ended noFolder = curve(id, file, scratch.path("c.csv"));
    CHECK(noFolder.code == 1);
    CHECK(noFolder.err == "piolo: E306: " + file + ": this is not a practice folder; give the path of one\n");
    CHECK(scratch.names() == std::vector<std::string>{"folder"});
}

TEST_CASE("a damaged line is reported and the rest is drawn") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const std::string damaged = scratch.put("folder/journal/b-2026.jsonl", "{\n");
    const Ended end = curve(id, folder, scratch.path("c.csv"));
    CHECK(end.code == 0);
    CHECK(
        end.err ==
        "piolo: E203: " + damaged +
            ":1: the line is not a JSON object; it is kept but not counted, so fix it by hand or leave it\n");
    CHECK(bytesOf(scratch.path("c.csv")).find("run,60,clean,1") != std::string::npos);
}

TEST_CASE("a curve that cannot be written leaves the old one") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const std::string out = scratch.path("missing/c.svg");
    const Ended end = curve(id, folder, out);
    CHECK(end.code == 1);
    CHECK(end.err ==
          "piolo: E302: " + out +
              ": cannot be written (No such file or directory); check the folder and its permissions\n");
}
