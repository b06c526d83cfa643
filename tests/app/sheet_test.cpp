// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"
#include "practice.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::test;

namespace {

const Id letterC{1, 1};

std::string practice(const Scratch& scratch, int target = 96) {
    Tempi tempi;
    tempi.rule = {StepKind::bpm, 4, 1, 100, Tempo::bpm(10), Tempo::bpm(target)};
    tempi.start = Tempo::bpm(10);
    scratch.put("folder/journal/a-2026.jsonl",
                lines({defined(1, letterC, "Letter C"), run(2, letterC, 60, Mark::clean),
                       defined(3, {1, 2}, "Trio"), defined(4, {1, 3}, "Trio"),
                       fact(5, PassageFact{{1, 4}, Title{"Scale", {}}, Music{}, tempi})}));
    return scratch.path("folder");
}

Ended sheet(const Args& passages, const std::string& folder, const std::string& out, const Args& more = {}) {
    Args words{"sheet"};
    words.insert(words.end(), passages.begin(), passages.end());
    words.insert(words.end(), {"--folder", folder, "--out", out});
    words.insert(words.end(), more.begin(), more.end());
    Around bare; // no display
    bare.environment = {
        {"DISPLAY", ""}, {"WAYLAND_DISPLAY", ""}, {"QT_QPA_PLATFORM", ""}, {"XDG_RUNTIME_DIR", ""}};
    return runPiolo(words, bare);
}

std::size_t countOf(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
    return count;
}

} // namespace

TEST_CASE("a sheet is drawn without a display as PDF, SVG or PNG, on A4 or Letter") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    for (const auto& [paper, box, view] :
         {std::tuple{"a4", "[0 0 595", "0 0 794 1123"}, {"letter", "[0 0 612", "0 0 816 1056"}}) {
        const Ended pdf = sheet({"Letter C"}, folder, scratch.path("s.pdf"), {"--paper", paper});
        CHECK(pdf.err == "");
        CHECK(pdf.code == 0);
        CHECK(bytesOf(scratch.path("s.pdf")).starts_with("%PDF"));
        CHECK(bytesOf(scratch.path("s.pdf")).find(box) != std::string::npos);
        CHECK(sheet({"Letter C"}, folder, scratch.path("s.svg"), {"--paper", paper}).code == 0);
        CHECK(bytesOf(scratch.path("s.svg")).find(view) != std::string::npos);
    }
    CHECK(sheet({"Letter C"}, folder, scratch.path("s.png")).code == 0);
    CHECK(bytesOf(scratch.path("s.png")).starts_with("\x89PNG"));
}

TEST_CASE(
    "the same sheet is the same picture each time, and has a circle for every clean run of every rung") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    REQUIRE(sheet({"Letter C"}, folder, scratch.path("one.svg")).code == 0);
    REQUIRE(sheet({"Letter C", "Letter C"}, folder, scratch.path("two.svg")).code == 0);
    CHECK(bytesOf(scratch.path("one.svg")) == bytesOf(scratch.path("two.svg")));
    // 60 and 64, with two clean runs each.
    CHECK(countOf(bytesOf(scratch.path("one.svg")), "<ellipse") +
              countOf(bytesOf(scratch.path("one.svg")), "<circle") ==
          4);
}

TEST_CASE("more pages than a picture holds need a PDF, which has them") {
    const Scratch scratch;
    const std::string folder = practice(scratch, 150);
    const Ended picture = sheet({"Scale"}, folder, scratch.path("s.png"));
    CHECK(picture.code == 2);
    CHECK(picture.err.starts_with("piolo: E125: --out: "));
    CHECK(sheet({"Scale"}, folder, scratch.path("s.pdf")).code == 0);
    CHECK(countOf(bytesOf(scratch.path("s.pdf")), "/Type /Page\n") > 10);
}

TEST_CASE("a sheet of no passage, of too many, of two of one name, on other paper or into another kind of "
          "file is one fault") {
    const Scratch scratch;
    const std::string folder = practice(scratch);
    const std::string out = scratch.path("s.pdf");
    const auto fault = [&](const Ended& ended, const char* number, int code) {
        CAPTURE(ended.err);
        CHECK(ended.code == code);
        CHECK(ended.err.starts_with(std::string("piolo: ") + number));
        CHECK(countOf(ended.err, "\n") == 1);
    };
    fault(sheet({}, folder, out), "E103", 2);
    fault(sheet(Args(21, "Letter C"), folder, out), "E119", 2);
    CHECK(sheet(Args(20, "Letter C"), folder, scratch.path("folder/s.pdf")).code == 0);
    fault(sheet({"Coda"}, folder, out), "E117", 2);
    fault(sheet({"Trio"}, folder, out), "E118", 2);
    fault(sheet({"Letter C"}, folder, out, {"--paper", "a5"}), "E115", 2);
    fault(sheet({"Letter C"}, folder, scratch.path("s.txt")), "E116", 2);
    fault(sheet({"Letter C"}, folder, scratch.path("missing/s.pdf")), "E302", 1);
    CHECK(scratch.names() == std::vector<std::string>{"folder"});
}
