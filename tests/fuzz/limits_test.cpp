// SPDX-License-Identifier: GPL-3.0-or-later
// Each limit in docs/limits.md: what is just within it is accepted, what is just beyond it leads to one fault
// with that limit's number.
#include "scratch_file.h"
#include "target.h"

#include "app/window/window_arguments.h"
#include "command/verbs/mark_lines.h"
#include "command/verbs/verb_list.h"
#include "journal/lines/fact_line.h"
#include "journal/lines/line_head.h"
#include "journal/settings/settings_json.h"
#include "practice/check/journal_check.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <optional>
#include <string>
#include <vector>

using namespace piolo;
using enum piolo::FaultNumber;

namespace {

const std::string someId = "00000000000000070000000000000001";

std::string lineWith(const std::string& device, const std::string& order, const std::string& more = "") {
    return R"({"v":1,"id":")" + someId + R"(","device":")" + device + R"(","seq":1,"order":)" + order +
           R"(,"at":"2026-03-15T10:33:55.704+01:00","kind":"removal","subject":")" + someId +
           R"(","removed":true)" + more + "}";
}

/// The number of the fault, or nothing if the line is a fact.
std::optional<FaultNumber> refusalOf(const std::string& line) {
    const auto fact = journal::fromLine(line, {"a.jsonl", 1});
    return fact ? std::nullopt : std::optional(fact.fault().number);
}

std::optional<FaultNumber> refusalOf(const command::Verb& verb, std::vector<std::string> words) {
    words.emplace_back("--out=/dev/null/x.wav"); // the order of options does not matter
    const auto read = command::Arguments::read(verb.syntax(), words);
    REQUIRE(read);
    const auto end = verb.run(*read);
    return end ? std::nullopt : std::optional(end.fault().number);
}

std::optional<FaultNumber> refusalOfMarks(const std::string& text) {
    std::FILE* file = std::fopen(fuzz::scratchFile("marks", text).c_str(), "rb");
    const auto mark = command::MarkReader(file).next();
    std::fclose(file);
    return mark ? std::nullopt : std::optional(mark.fault().number);
}

std::string nested(int depth) {
    return R"(,"later":)" + std::string(static_cast<std::size_t>(depth), '[') +
           std::string(static_cast<std::size_t>(depth), ']');
}

} // namespace

TEST_CASE("a journal line holds 65536 bytes and no more") {
    const auto line = lineWith(someId, "1");
    CHECK(!refusalOf(line + std::string(65'536 - line.size(), ' ')));
    CHECK(refusalOf(line + std::string(65'537 - line.size(), ' ')) == lineTooLong);
}

TEST_CASE("a line is nested sixteen deep and no deeper") {
    CHECK(!refusalOf(lineWith(someId, "1", nested(15))));
    CHECK(!refusalOf(lineWith(someId, "1", nested(16))));
    CHECK(refusalOf(lineWith(someId, "1", nested(17))) == badJson);
    CHECK(refusalOf(lineWith(someId, "1", nested(30'000))) == badJson);
}

TEST_CASE("an order goes up to the end of the year 9999 and no further") {
    CHECK(Timestamp::parse("9999-12-31T23:59:59.999Z")->utcMillis == 253'402'300'799'999);
    CHECK(!refusalOf(lineWith(someId, "253402300799999")));
    CHECK(refusalOf(lineWith(someId, "253402300800000")) == badFactValue);
    CHECK(refusalOf(lineWith(someId, "18446744073709551616")) == badFactValue);
    CHECK(refusalOf(lineWith(someId, "-1")) == badFactValue);
}

TEST_CASE("a mark's line holds 65536 bytes and no more") {
    CHECK(!refusalOfMarks("clean" + std::string(65'531, ' ') + "\n"));
    CHECK(refusalOfMarks("clean" + std::string(65'532, ' ') + "\n") == lineTooLong);
}

TEST_CASE("bars, runs, count-in and rate have their ends, and a file its 4 GiB") {
    const auto click = [](const char* option, const char* value) {
        return refusalOf(command::click_verb::verb(),
                         {"--tempo=400", "--bars=1", "--meter=1/4", option, value});
    };
    CHECK(click("--bars", "1000000000000") == tooLarge);
    CHECK(click("--bars", "1000000000001") == badRange);
    CHECK(click("--bars", "99999999999999999999999") == badRange);
    // 400 BPM at 8000 Hz: 1200 samples per bar; a WAV file has room for (2^32 - 1 - 50) / 4 samples, which is
    // 894784 bars.
    const auto at8000 = [](const char* bars) {
        return refusalOf(command::click_verb::verb(),
                         {"--tempo=400", "--meter=1/4", "--rate=8000", "--bars", bars});
    };
    CHECK(at8000("894784") == cannotWrite);
    CHECK(at8000("894785") == tooLarge);
    CHECK(click("--count-in", "4") == cannotWrite);
    CHECK(click("--count-in", "5") == badRange);
    CHECK(click("--rate", "192000") == cannotWrite);
    CHECK(click("--rate", "192001") == badRange);
    CHECK(click("--rate", "8000") == cannotWrite);
    CHECK(click("--rate", "7999") == badRange);
    const auto runs = [](const char* value) {
        return refusalOf(command::track_verb::verb(), {"--start=400", "--target=400", "--climb=1", "--bars=1",
                                                       "--meter=1/4", "--rate=8000", "--runs", value});
    };
    CHECK(runs("10000") == cannotWrite);
    CHECK(runs("10001") == badRange);
}

TEST_CASE("a picture has 64 to 8192 points a side") {
    const auto size = [](const std::string& word) {
        return app::readWindowArguments(std::vector<std::string>{"--size", word}, {{"log"}, {"system"}}).ok();
    };
    CHECK(size("64x8192"));
    CHECK(!size("63x8192"));
    CHECK(!size("64x8193"));
    CHECK(!size("64x99999999999999999999"));
}

TEST_CASE("a device's name that would lead out of the folder is refused wherever it occurs") {
    for (const std::string name :
         {"../../outside", "/etc/passwd", "a/b", "..", "", "00000000000000070000000000000001/.."}) {
        CAPTURE(name);
        CHECK(refusalOf(lineWith(name, "1")) == badFactValue);
        journal::FirstFault first{{"settings.json", 0}, {}};
        CHECK(journal::settingsFromJson(R"({"device":")" + name + R"("})", first).device.empty());
        CHECK(first.fault.has_value());
    }
}

TEST_CASE("a file that never ends is reported, not waited for") {
    const auto faults = practice::faultsOf({{"/dev/zero"}, {}}, {2026, 5, 1});
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().number == cannotRead);
}
