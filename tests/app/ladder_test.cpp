// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include <doctest/doctest.h>

using namespace piolo::test;

namespace {

constexpr auto header = "mark,tempo_before,tempo_after,streak_after\n";

// Runs the ladder and returns its rows without the header.
std::string rows(const Args& options, const std::string& marks) {
    Args words{"ladder"};
    words.insert(words.end(), options.begin(), options.end());
    Around around;
    around.input = marks;
    const Ended end = runPiolo(words, around);
    CHECK(end.err == "");
    CHECK(end.code == 0);
    REQUIRE(end.out.starts_with(header));
    return end.out.substr(std::string(header).size());
}

Args ladder(const std::string& start, const std::string& target, const std::string& drop,
            const std::string& climb, const std::string& cleanRuns, const Args& more = {}) {
    Args words{"--start", start,     "--target", target,         "--drop",
               drop,      "--climb", climb,      "--clean-runs", cleanRuns};
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

} // namespace

TEST_CASE("a miss after four of five goes from 84 to 80, and each back undoes one mark") {
    CHECK(rows(ladder("84", "96", "4", "2", "5"), "clean\nclean\nclean\nclean\nmiss\nback\nback\nmiss\n") ==
          "clean,84,84,1\nclean,84,84,2\nclean,84,84,3\nclean,84,84,4\nmiss,84,80,0\nback,80,84,4\n"
          "back,84,84,3\nmiss,84,80,0\n");
}

TEST_CASE("five clean runs in a row climb, and the streak starts again") {
    CHECK(rows(ladder("72", "96", "4", "2", "5"), "clean\nclean\nclean\nclean\nclean\nclean\n") ==
          "clean,72,72,1\nclean,72,72,2\nclean,72,72,3\nclean,72,72,4\nclean,72,74,0\nclean,74,74,1\n");
}

TEST_CASE("the last climb is shortened to the target, and a full streak there stays there") {
    CHECK(rows(ladder("95.5", "96", "4", "2", "2"), "clean\nclean\nclean\nclean\n") ==
          "clean,95.5,95.5,1\nclean,95.5,96,0\nclean,96,96,1\nclean,96,96,0\n");
}

TEST_CASE("a miss at the floor still ends the streak; below the floor the tempo stays") {
    CHECK(rows(ladder("44", "96", "4", "2", "5", {"--floor", "42"}),
               "clean\nmiss\nclean\nmiss\ntempo 30\nclean\nmiss\n") ==
          "clean,44,44,1\nmiss,44,42,0\nclean,42,42,1\nmiss,42,42,0\ntempo "
          "30,42,30,0\nclean,30,30,1\nmiss,30,30,0\n");
}

TEST_CASE("the floor is 40, or the start if that is lower") {
    CHECK(rows(ladder("42", "96", "4", "2", "5"), "miss\n") == "miss,42,40,0\n");
    CHECK(rows(ladder("36.25", "96", "4", "2", "5"), "miss\n") == "miss,36.25,36.25,0\n");
}

TEST_CASE("above the target, a clean run does not climb and a miss drops") {
    CHECK(rows(ladder("80", "84", "4", "2", "2"), "tempo 100\nclean\nclean\nmiss\n") ==
          "tempo 100,80,100,0\nclean,100,100,1\nclean,100,100,0\nmiss,100,96,0\n");
}

TEST_CASE("a hand-set tempo ends the streak and can be taken back, streak and all") {
    CHECK(rows(ladder("80", "96", "4", "2", "5"), "clean\nclean\ntempo 72.125\nback\nclean\n") ==
          "clean,80,80,1\nclean,80,80,2\ntempo 72.125,80,72.125,0\nback,72.125,80,2\nclean,80,80,3\n");
}

TEST_CASE("back with nothing left changes nothing, and a mark that changed nothing can be taken back") {
    CHECK(rows(ladder("40", "96", "4", "2", "5"), "back\nmiss\nback\nback\nclean\n") ==
          "back,40,40,0\nmiss,40,40,0\nback,40,40,0\nback,40,40,0\nclean,40,40,1\n");
}

// The traditional metronome scale: 60 63 66 69 72, 2 below 40 and 8 above 208.
TEST_CASE("in notches a step goes to the next value of the scale") {
    const Args notches{"--step", "notches", "--floor", "10"};
    CHECK(rows(ladder("61", "400", "1", "1", "1", notches), "clean\nmiss\nmiss\n") ==
          "clean,61,63,0\nmiss,63,60,0\nmiss,60,58,0\n");
    CHECK(rows(ladder("61", "400", "2", "3", "1", notches), "miss\nclean\n") ==
          "miss,61,58,0\nclean,58,66,0\n");
    CHECK(rows(ladder("40", "400", "1", "1", "1", notches), "miss\ntempo 208\nclean\n") ==
          "miss,40,38,0\ntempo 208,38,208,0\nclean,208,216,0\n");
}

TEST_CASE("blanks, blank lines, carriage returns and a last line without a line end are accepted") {
    CHECK(rows(ladder("80", "96", "4", "2", "5"), "\n  clean \r\n\t\r\n\ntempo \t 72.50\r\nmiss") ==
          "clean,80,80,1\ntempo 72.5,80,72.5,0\nmiss,72.5,68.5,0\n");
    CHECK(rows(ladder("80", "96", "4", "2", "5"), "") == "");
}

TEST_CASE("a bad line ends it with exit 1 after the rows before it") {
    struct Bad {
        std::string line;
        std::string reported;
    };
    const std::string tempo =
        "is not a valid tempo; write 10 to 400 with at most three decimals, for example tempo 72.5\n";
    const std::string mark = "is not a valid mark; write clean, miss, back, or tempo and a number\n";
    const std::vector<Bad> bads{
        {"cleann", "E201: -:3: \"cleann\" " + mark},
        {"CLEAN", "E201: -:3: \"CLEAN\" " + mark},
        {"clean clean", "E201: -:3: \"clean clean\" " + mark},
        {"tempo80", "E201: -:3: \"tempo80\" " + mark},
        {"tempo", "E202: -:3: \"\" " + tempo},
        {"tempo 9.999", "E202: -:3: \"9.999\" " + tempo},
        {"tempo 400.001", "E202: -:3: \"400.001\" " + tempo},
        {"tempo 80.1234", "E202: -:3: \"80.1234\" " + tempo},
        {"tempo 80,5", "E202: -:3: \"80,5\" " + tempo},
        {"tempo -80", "E202: -:3: \"-80\" " + tempo},
        {"tempo 8e1", "E202: -:3: \"8e1\" " + tempo},
        {std::string(70'000, 'x'),
         "E211: -:3: the line is longer than 65536 bytes; it is not counted, so shorten it or remove it\n"},
    };
    for (const Bad& bad : bads) {
        Args words = ladder("80", "96", "4", "2", "5");
        words.insert(words.begin(), "ladder");
        Around around;
        around.input = "clean\n\n" + bad.line + "\nclean\n";
        const Ended end = runPiolo(words, around);
        CHECK(end.code == 1);
        CHECK(end.out == header + std::string("clean,80,80,1\n"));
        CHECK(end.err == "piolo: " + bad.reported);
    }
}

TEST_CASE("input is shown on one line, however strange it is") {
    Args words = ladder("80", "96", "4", "2", "5");
    words.insert(words.begin(), "ladder");
    Around around;
    around.input = "a\x1b[31m%1 %2\n";
    const Ended end = runPiolo(words, around);
    CHECK(end.err == "piolo: E201: -:1: \"a\xEF\xBF\xBD[31m%1 %2\" is not a valid mark; write clean, miss, "
                     "back, or tempo and a number\n");
}

TEST_CASE("unreadable standard input and full standard output are reported") {
    Args words = ladder("80", "96", "4", "2", "5");
    words.insert(words.begin(), "ladder");
    Around folder;
    folder.inputPath = "/";
    const Ended unread = runPiolo(words, folder);
    CHECK(unread.code == 1);
    CHECK(unread.err ==
          "piolo: E301: -:1: cannot be read (Is a directory); check the name and its permissions\n");
    Around full;
    full.outputPath = "/dev/full";
    const Ended unwritten = runPiolo(words, full);
    CHECK(unwritten.code == 1);
    CHECK(unwritten.err == "piolo: E307: -: the disk is full; make room and try again\n");
}
