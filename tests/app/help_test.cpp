// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include "command/verbs/verb_list.h"

#include <doctest/doctest.h>

using namespace piolo::test;
using piolo::command::Verb;
using piolo::command::verbs;

namespace {

std::string helpOf(const Args& words) {
    const Ended end = runPiolo(words);
    CHECK(end.code == 0);
    CHECK(end.err == "");
    CHECK(end.out.ends_with('\n'));
    return end.out;
}

void checkWidth(const std::string& help) {
    for (std::size_t begin = 0; begin < help.size(); begin = help.find('\n', begin) + 1)
        CHECK(help.find('\n', begin) - begin <= 120);
}

} // namespace

TEST_CASE("piolo --help names every verb and option of the window") {
    const std::string help = helpOf({"--help"});
    REQUIRE(verbs().size() >= 12);
    for (const Verb& verb : verbs()) {
        const auto line = help.find("\npiolo " + std::string(verb.name) + ' ');
        REQUIRE(line != std::string::npos);
        CHECK(help.substr(line, help.find('\n', line + 1) - line).ends_with(verb.summary));
    }
    for (const char* option :
         {"--folder", "--drill", "--screen", "--language", "--shot", "--size", "--version", "Example: "})
        CHECK(help.find(option) != std::string::npos);
    checkWidth(help);
}

TEST_CASE("every verb has a help with its options and an example, wherever --help is") {
    for (const Verb& verb : verbs()) {
        const std::string name(verb.name);
        CAPTURE(name);
        const std::string help = helpOf({name, "--help"});
        CHECK(help.starts_with("piolo " + name + ": "));
        CHECK(help.find("\n\nUsage: piolo " + name + ' ') != std::string::npos);
        CHECK(help.find("\nExample: ") != std::string::npos);
        CHECK(help.find("piolo " + name + " ", help.find("\nExample: ")) != std::string::npos);
        for (const auto& option : verb.options) {
            CAPTURE(option.name);
            CHECK(help.find("\n  " + std::string(option.name) + ' ') != std::string::npos);
            CHECK(option.value.empty() == option.example.empty());
        }
        checkWidth(help);
    }
    CHECK(helpOf({"click", "--tempo", "60", "--help"}) == helpOf({"click", "--help"}));
}

TEST_CASE("every verb refuses an option that it does not have") {
    for (const Verb& verb : verbs()) {
        const std::string name(verb.name);
        CAPTURE(name);
        const Ended end = runPiolo({name, "--wibble"});
        CHECK(end.code == 2);
        CHECK(end.out == "");
        CHECK(end.err.starts_with("piolo: E102: --wibble: "));
        CHECK(end.err.find("piolo " + name + " --help") != std::string::npos);
    }
}

TEST_CASE("the examples for click, track, ladder and scale work as they are") {
    const Scratch scratch;
    const std::string shell = "cd '" + scratch.path() + "' && piolo() { '" PIOLO_EXECUTABLE "' \"$@\"; } && ";
    for (const char* verb : {"click", "track", "ladder", "scale"}) {
        const std::string help = helpOf({verb, "--help"});
        const auto begin = help.find("\nExample: ") + 10;
        const std::string example = help.substr(begin, help.find('\n', begin) - begin);
        CHECK(std::system((shell + example + " >/dev/null").c_str()) == 0);
    }
    CHECK(scratch.names() == std::vector<std::string>{"ladder.mid", "septuplets.wav"});
}

TEST_CASE("--version prints name and version") {
    const std::string version = helpOf({"--version"});
    CHECK(version.starts_with("piolo "));
    CHECK(version.find_first_of("0123456789") == 6);
}

TEST_CASE("help that cannot be written is reported") {
    Around full;
    full.outputPath = "/dev/full";
    const Ended end = runPiolo({"click", "--help"}, full);
    CHECK(end.code == 1);
    CHECK(end.err == "piolo: E307: -: the disk is full; make room and try again\n");
}
