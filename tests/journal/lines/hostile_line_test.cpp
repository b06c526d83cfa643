// SPDX-License-Identifier: GPL-3.0-or-later
// Lines that are not facts, and lines that are cut off or damaged: one fault each, nothing worse.
#include "full_lines.h"
#include "journal/lines/fact_line.h"
#include "random_facts.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace piolo;
using namespace piolo::journal;
using nlohmann::json;
using piolo::test::fullLines;
using piolo::test::RandomFacts;
using piolo::test::seedOfTest;

namespace {

const FaultLocation location{"practice/journal/x.jsonl", 17};

Fault faultOf(const std::string& line) {
    const auto read = fromLine(line, location);
    REQUIRE_FALSE(read.ok());
    CHECK(read.fault().location == location);
    return read.fault();
}

std::string nested(const char* open, const char* close, int depth) {
    std::string text;
    for (int i = 0; i < depth; ++i) text += open;
    for (int i = 0; i < depth; ++i) text += close;
    return text;
}

} // namespace

TEST_CASE("a newer format is reported before anything else is checked") {
    CHECK(faultOf(R"({"v":2,"kind":["not","text"]})") == Fault{FaultNumber::newerFormat, location, {"2"}});
    CHECK(faultOf(R"({"v":1,"kind":"lesson"})") == Fault{FaultNumber::unknownKind, location, {"lesson"}});
}

TEST_CASE("what is not a JSON object is one fault, whatever it is") {
    using enum FaultNumber;
    const std::vector<std::pair<std::string, FaultNumber>> lines{
        {"", badJson},
        {"{", badJson},
        {"hello", badJson},
        {"{}", badFact},
        {"[]", badFact},
        {"7", badFact},
        {"null", badFact},
        {R"({"v":NaN})", badJson},
        {R"({"v":Infinity})", badJson},
        {R"({"v":1e999})", badJson},
        {R"({"v":1,})", badJson},
        {R"({"v":1} {"v":1})", badJson},
        {R"({"v":"\ud800"})", badJson},
        {std::string("{\"v\":1\0}", 8), badJson},
        {std::string(200, '\0'), badJson},
        {"{\"v\":\"\xC3\x28\"}", notUtf8},
        {"\xFF\xFE{\0}", notUtf8},
        {R"({"v":123456789012345678901234567890})", badFactValue},
        {R"({"v":1.0})", badFactValue},
        {R"({"v":0})", badFactValue},
        {R"({"v":1,"kind":")" + std::string(60'000, 'k') + "\"}", unknownKind},
        {nested("[", "]", 30'000), badJson},
        {nested(R"({"a":)", "}", 10'000), badJson},
        {nested("[", "", 65'000), badJson},
        {"{\"v\":1,\"x\":" + nested("[", "]", 17) + "}", badJson},
        {std::string(longestLine + 1, ' '), lineTooLong},
    };
    for (const auto& [line, number] : lines) {
        CAPTURE(line.substr(0, 80));
        const Fault fault = faultOf(line);
        CHECK(fault.number == number);
        for (const auto& argument : fault.arguments) CHECK(argument.size() <= 100);
    }
}

TEST_CASE("a line cut off anywhere is one fault") {
    for (const json& whole : fullLines()) {
        const std::string line = whole.dump();
        for (std::size_t length = 0; length < line.size(); ++length) {
            CAPTURE(length);
            CHECK(faultOf(line.substr(0, length)).number == FaultNumber::badJson);
        }
    }
}

TEST_CASE("bytes changed at random give a fact or one fault") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    int refused = 0;
    for (int round = 0; round < 20'000; ++round) {
        std::string line = toLine(random.fact(static_cast<std::size_t>(random.number(0, 8))));
        for (auto changes = random.number(1, 3); changes > 0; --changes)
            line[static_cast<std::size_t>(random.number(0, static_cast<std::int64_t>(line.size()) - 1))] =
                static_cast<char>(random.number(0, 255));
        const auto read = fromLine(line, location);
        if (read.ok())
            CHECK(fromLine(toLine(*read), location).ok());
        else
            ++refused;
    }
    CHECK(refused > 10'000);
}
