// SPDX-License-Identifier: GPL-3.0-or-later
// The pages describe the verbs as the verbs describe themselves. PIOLO_WRITE_PAGES=1 rewrites the table.
#include "command.h"

#include "command/verbs/verb_help.h"
#include "command/verbs/verb_list.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <regex>
#include <set>

using namespace piolo::test;
using piolo::command::Verb;
using piolo::command::verbs;

namespace {

const std::string commandPage = PIOLO_SOURCE_DIR "/docs/command.md";
const std::string begins = "<!-- verbs: written by tests/app/verb_pages_test.cpp -->\n";
const std::string ends = "<!-- verbs end -->\n";

/// The page with the table of verbs as the program prints it.
std::string pageWithTable() {
    std::string page = bytesOf(commandPage);
    const auto begin = page.find(begins);
    const auto end = page.find(ends);
    REQUIRE(begin != std::string::npos);
    REQUIRE(end != std::string::npos);
    const auto table = begin + begins.size();
    return page.replace(table, end - table, piolo::command::verbTable());
}

/// Every match of `pattern` in a page, its first group.
std::set<std::string> foundIn(const std::string& page, const char* pattern) {
    const std::regex wanted(pattern);
    std::set<std::string> found;
    for (std::sregex_iterator match(page.begin(), page.end(), wanted), end; match != end; ++match)
        found.insert((*match)[1]);
    return found;
}

std::set<std::string> verbNames() {
    std::set<std::string> names;
    for (const Verb& verb : verbs()) names.emplace(verb.name);
    return names;
}

} // namespace

TEST_CASE("the table in docs/command.md is the one that the verbs make") {
    const std::string wanted = pageWithTable();
    if (std::getenv("PIOLO_WRITE_PAGES") != nullptr) std::ofstream(commandPage, std::ios::binary) << wanted;
    CHECK(bytesOf(commandPage) == wanted);
}

TEST_CASE(
    "docs/command.md has a section for every verb that names each of its options, and no other section") {
    const std::string page = bytesOf(commandPage);
    auto sections = foundIn(page, "\n## ([a-z]+)\n");
    CHECK(sections == verbNames());
    for (const Verb& verb : verbs()) {
        const std::string heading = "\n## " + std::string(verb.name) + "\n";
        const auto begin = page.find(heading);
        const std::string section = page.substr(begin, page.find("\n## ", begin + 1) - begin);
        CHECK(section.find("piolo " + std::string(verb.name) + ' ') != std::string::npos);
        const std::string whole = verb.name == "track" ? page : section; // track refers to click
        for (const auto& option : verb.options) {
            INFO(verb.name << " has " << option.name);
            CHECK(whole.find(option.name) != std::string::npos);
        }
    }
}

TEST_CASE("the README names every verb, and none that is not there") {
    CHECK(foundIn(bytesOf(PIOLO_SOURCE_DIR "/README.md"), "`piolo ([a-z]+)`") == verbNames());
}

TEST_CASE("the fault of an unknown verb names them all") {
    const Ended end = runPiolo({"klick"});
    CHECK(end.code == 2);
    CHECK(end.err.find(piolo::command::verbNames()) != std::string::npos);
    for (const Verb& verb : verbs()) {
        INFO(verb.name);
        CHECK(std::regex_search(end.err, std::regex("[ ,]" + std::string(verb.name) + "(,| or )")));
    }
}
