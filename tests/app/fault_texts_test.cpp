// SPDX-License-Identifier: GPL-3.0-or-later
// Compares the numbers in src/core/base/fault.h, their sentences, and docs/errors.md.
#include "command.h"
#include "practice/faults/fault_text.h"

#include <doctest/doctest.h>
#include <map>
#include <regex>
#include <set>

using namespace piolo;
using namespace piolo::test;

namespace {

// Names by number, read from the header itself.
std::map<int, std::string> declared() {
    const std::string header = bytesOf(PIOLO_SOURCE_DIR "/src/core/base/fault.h");
    const std::regex line("\n    ([a-zA-Z0-9]+) = ([0-9]{3}),");
    std::map<int, std::string> found;
    for (std::sregex_iterator match(header.begin(), header.end(), line), end; match != end; ++match)
        CHECK(found.emplace(std::stoi((*match)[2]), (*match)[1]).second);
    return found;
}

Fault sample(int number) {
    return {static_cast<FaultNumber>(number), {"here", 3}, {"first", "second", "third"}};
}

} // namespace

TEST_CASE("every fault number has a sentence with two parts: what, and what to do") {
    const auto numbers = declared();
    CHECK(numbers.size() >= 40);
    for (const auto& [number, name] : numbers) {
        CAPTURE(name);
        const std::string sentence = practice::faultSentence(sample(number)).toStdString();
        CHECK(sentence.find("; ") != std::string::npos);
        CHECK(sentence.find_first_of("[]%\n") == std::string::npos);
        CHECK(practice::faultLine(sample(number)).toStdString() ==
              "E" + std::to_string(number) + ": here:3: " + sentence);
    }
}

TEST_CASE("docs/errors.md has a paragraph for every number, under its exact sentence, and no other") {
    const std::string page = bytesOf(PIOLO_SOURCE_DIR "/docs/errors.md");
    const std::regex heading("\n### E([0-9]{3}) ([a-zA-Z0-9]+)\n\n> ([^\n]+)\n\n[^\n#][^\n]{30,}");
    std::set<int> reported;
    const auto numbers = declared();
    for (std::sregex_iterator match(page.begin(), page.end(), heading), end; match != end; ++match) {
        const int number = std::stoi((*match)[1]);
        CAPTURE(number);
        CHECK(reported.insert(number).second);
        REQUIRE(numbers.contains(number));
        CHECK((*match)[2] == numbers.at(number));
        const Fault shown{static_cast<FaultNumber>(number), {}, {"…1", "…2", "…3"}};
        CHECK((*match)[3] == practice::faultSentence(shown).toStdString());
    }
    CHECK(reported.size() == numbers.size());
}

TEST_CASE("text in brackets is left out with its argument, and an argument is never read as a placeholder") {
    CHECK(practice::faultSentence({FaultNumber::cannotRead, {}, {}}) ==
          "cannot be read; check the name and its permissions");
    CHECK(practice::faultLine({FaultNumber::cannotRead, {"a.jsonl"}, {"%1 [gone]"}}) ==
          "E301: a.jsonl: cannot be read (%1 [gone]); check the name and its permissions");
}
