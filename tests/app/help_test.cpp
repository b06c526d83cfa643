// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include <doctest/doctest.h>

using namespace piolo::test;

namespace {

const std::vector<std::string> verbs{"click", "track", "ladder", "scale",  "curve",
                                     "bars",  "staff", "check",  "export", "import"};

std::string helpOf(const Args& words) {
    const Ended end = runPiolo(words);
    CHECK(end.code == 0);
    CHECK(end.err == "");
    CHECK(end.out.ends_with('\n'));
    return end.out;
}

} // namespace

TEST_CASE("piolo --help names every verb and option of the window") {
    const std::string help = helpOf({"--help"});
    for (const std::string& verb : verbs) CHECK(help.find("piolo " + verb) != std::string::npos);
    for (const char* option :
         {"--folder", "--drill", "--screen", "--shot", "--size", "--version", "Example: "})
        CHECK(help.find(option) != std::string::npos);
}

TEST_CASE("every verb has a help with an example, wherever --help stands") {
    for (const std::string& verb : verbs) {
        const std::string help = helpOf({verb, "--help"});
        CHECK(help.starts_with("piolo " + verb + ": "));
        CHECK(help.find("\nExample: ") != std::string::npos);
        CHECK(help.find("piolo " + verb + " ", help.find("\nExample: ")) != std::string::npos);
        for (std::size_t begin = 0; begin < help.size(); begin = help.find('\n', begin) + 1)
            CHECK(help.find('\n', begin) - begin <= 120);
    }
    CHECK(helpOf({"click", "--tempo", "60", "--help"}) == helpOf({"click", "--help"}));
}

TEST_CASE("the examples for click, track and ladder work as they stand") {
    const Scratch scratch;
    const std::string shell = "cd '" + scratch.path() + "' && piolo() { '" PIOLO_EXECUTABLE "' \"$@\"; } && ";
    for (const char* verb : {"click", "track", "ladder"}) {
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

TEST_CASE("help that cannot be written is told") {
    Around full;
    full.outputPath = "/dev/full";
    const Ended end = runPiolo({"click", "--help"}, full);
    CHECK(end.code == 1);
    CHECK(end.err == "piolo: E307: -: the disk is full; make room and try again\n");
}
