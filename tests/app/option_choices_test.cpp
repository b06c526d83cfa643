// SPDX-License-Identifier: GPL-3.0-or-later
// Compares the words that options accept with the pages that list them.
#include "command.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <regex>

using namespace piolo::test;

namespace {

/// The choices offered by the fault for a wrong one: "a, b or c".
std::string offered(const Args& words) {
    const Ended end = runPiolo(words);
    CHECK(end.code == 2);
    std::smatch found;
    REQUIRE(std::regex_search(end.err, found, std::regex(R"((\w+, )+\w+ or \w+)")));
    return found.str();
}

/// The file with each run of white space as a single space.
std::string page(const std::string& name) {
    std::ifstream in(PIOLO_SOURCE_DIR "/" + name);
    std::string text;
    for (std::string word; in >> word;) text += word + " ";
    return text;
}

} // namespace

TEST_CASE("the help and the page name the very screens and languages that the window takes") {
    const std::string help = runPiolo({"--help"}).out;
    const std::string docs = page("docs/command.md");
    for (const char* option : {"--screen", "--language"}) {
        const std::string choices = offered({option, "nonsense"});
        CAPTURE(choices);
        CHECK(std::ranges::count(choices, ',') >= 2);
        CHECK(help.find(choices) != std::string::npos);
        CHECK(docs.find(choices) != std::string::npos);
    }
}

TEST_CASE("the help and the page name the very voices that a click has") {
    const std::string choices = offered({"click", "--tempo", "60", "--bars", "1", "--voice", "nonsense"});
    CAPTURE(choices);
    CHECK(std::ranges::count(choices, ',') >= 3);
    CHECK(runPiolo({"click", "--help"}).out.find(choices) != std::string::npos);
    const std::string listed = std::regex_replace(choices, std::regex(" or "), ", ");
    CHECK(page("docs/command.md").find("| " + listed + " |") != std::string::npos);
}
