// SPDX-License-Identifier: GPL-3.0-or-later
#include "../journal/lines/bare_line.h"
#include "command.h"
#include "practice.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;
using namespace piolo::test;

namespace {

const Id letterC{1, 1};
const std::string kept = "kept but not counted, so fix it by hand or leave it\n";

// A good line with one part replaced.
std::string changed(const Fact& good, const std::string& from, const std::string& to) {
    std::string line = bareLine(good);
    const auto at = line.find(from);
    REQUIRE(at != std::string::npos);
    return line.replace(at, from.size(), to) + '\n';
}

Ended check(const std::string& path) { return runPiolo({"check", path}); }

} // namespace

TEST_CASE("a valid folder has nothing to report") {
    const Scratch scratch;
    const std::string good = lines({defined(1, letterC, "Letter C"), run(2, letterC, 60, Mark::clean),
                                    fact(3, LateMissFact{letterC, {9, 2}}),
                                    fact(4, BackFact{letterC, {9, 3}}), fact(5, RemovalFact{letterC, true})});
    scratch.put("journal/a-2026.jsonl", good);
    scratch.put("journal/a-2026 (copy).jsonl", good);
    scratch.put("takes/notes.txt", "not a journal");
    for (const std::string name : {"", "journal", "journal/a-2026.jsonl"}) {
        const Ended end = check(scratch.path(name));
        CHECK(end.out == "");
        CHECK(end.err == "");
        CHECK(end.code == 0);
    }
}

TEST_CASE("an empty folder has nothing to report, and nothing is created in it") {
    const Scratch scratch;
    CHECK(check(scratch.path()).code == 0);
    CHECK(scratch.names().empty());
}

TEST_CASE("every fault of a line is reported with its file and line on standard output") {
    const Scratch scratch;
    const Fact good = run(2, letterC, 60, Mark::clean);
    const std::string passage = letterC.text();
    const std::string path =
        scratch.put("a.jsonl", lines({defined(1, letterC, "Letter C")}) + "{\n" +
                                   changed(good, "\"mark\":\"clean\",", "") + changed(good, "60000", "5") +
                                   changed(good, "\"v\":1", "\"v\":7") +
                                   changed(good, "\"kind\":\"run\"", "\"kind\":\"solo\"") + "\xff\n" +
                                   std::string(70'000, 'x') + "\n" + journal::toLine(good).substr(0, 40));
    const Ended end = check(path);
    CHECK(end.code == 1);
    CHECK(end.err == "");
    CHECK(end.out ==
          "E203: " + path + ":2: the line is not a JSON object; it is " + kept + "E204: " + path +
              ":3: the key \"mark\" is missing; the line is " + kept + "E205: " + path +
              ":4: the key \"tempo\" has an impossible value: 5; the line is " + kept + "E206: " + path +
              ":5: the line is in a newer format (7); it is kept but not counted, so use a newer Piolo\n" +
              "E207: " + path +
              ":6: \"solo\" is an unknown kind of fact; the line is kept but not counted, so use a newer "
              "Piolo\n" +
              "E210: " + path + ":7: the line is not UTF-8 text; it is " + kept + "E211: " + path +
              ":8: the line is longer than 65536 bytes; it is not counted, so shorten it or remove it\n" +
              "E208: " + path +
              ":9: the last line was cut short; it is kept but not counted, so wait until the whole file has "
              "been copied\n");
}

TEST_CASE("a passage on a line with a wrong checksum is unknown, however the line ends") {
    const Scratch scratch;
    std::string passage = journal::toLine(defined(1, letterC, "Letter C"));
    passage.replace(passage.find("Letter C"), 8, "Letter D");
    for (const std::string end : {"\n", "\r\n"}) {
        const std::string path =
            scratch.put("a.jsonl", passage + end + lines({run(2, letterC, 60, Mark::clean)}));
        const std::string out = check(path).out;
        CHECK(out.starts_with("E214: " + path + ":1: "));
        CHECK(out.find("E212: " + path + ":2: ") != std::string::npos);
    }
}

TEST_CASE("one id for two facts is reported, even across files; an identical copy is not") {
    const Scratch scratch;
    const Fact first = run(2, letterC, 60, Mark::clean);
    scratch.put("journal/a.jsonl", lines({defined(1, letterC, "Letter C"), first, first}));
    const std::string other =
        scratch.put("journal/b.jsonl", lines({first, run(2, letterC, 60, Mark::missed)}));
    const Ended end = check(scratch.path());
    CHECK(end.code == 1);
    CHECK(end.out ==
          "E209: " + other + ":2: the id " + first.id.text() +
              " is used for two different facts; only one of them is counted, so remove the wrong line by "
              "hand\n");
    const Ended alone = check(other);
    CHECK(alone.out == end.out);
}

TEST_CASE("a number that a device used twice is reported: two programs wrote as that device") {
    const Scratch scratch;
    const Fact first = run(2, letterC, 60, Mark::clean);
    Fact second = run(3, letterC, 60, Mark::missed);
    second.seq = first.seq;
    const std::string path =
        scratch.put("journal/a.jsonl", lines({defined(1, letterC, "Letter C"), first, first, second}));
    CHECK(
        check(scratch.path()).out ==
        "E217: " + path + ":4: the number 2 of device " + first.device +
            " is used for two facts; two programs wrote as the same device, so keep each device's own state "
            "directory to itself\n");
    second.device = std::string(32, 'd');
    scratch.put("journal/a.jsonl", lines({defined(1, letterC, "Letter C"), first, second}));
    CHECK(check(scratch.path()).out == "");
}

TEST_CASE("passages and runs that are named but recorded nowhere are reported") {
    const Scratch scratch;
    const std::string path = scratch.put(
        "journal/a.jsonl", lines({run(1, letterC, 60, Mark::clean), fact(2, LateMissFact{{1, 2}, {9, 8}})}));
    const std::string words =
        " is used here but not recorded anywhere; copy the journal files of all devices into the folder\n";
    const std::string unknownC = "E212: " + path + ":1: the id " + letterC.text() + words;
    const std::string others = "E212: " + path + ":2: the id " + Id{1, 2}.text() + words + "E212: " + path +
                               ":2: the id " + Id{9, 8}.text() + words;
    CHECK(check(scratch.path()).out == unknownC + others);
    scratch.put("journal/b.jsonl", lines({defined(7, letterC, "Letter C")}));
    CHECK(check(scratch.path()).out == others);
    CHECK(check(path).out == others);
}

TEST_CASE("what was played in the future is reported once for each file, unless a clock fact puts it right") {
    const Scratch scratch;
    Fact ahead = run(3, letterC, 60, Mark::clean);
    ahead.at = *Timestamp::parse("2126-03-01T18:00:00.000+01:00");
    Fact later = run(4, letterC, 60, Mark::clean);
    later.at = *Timestamp::parse("9999-12-31T23:59:59.999+00:00");
    Fact edit = defined(5, letterC, "Letter C"); // nobody asks when a name was changed
    edit.at = later.at;
    const std::string path = scratch.put(
        "journal/a.jsonl",
        lines({defined(1, letterC, "Letter C"), run(2, letterC, 60, Mark::clean), ahead, later, edit}));
    const Ended end = check(scratch.path());
    CHECK(end.code == 1);
    CHECK(
        end.out ==
        "E215: " + path +
            ":3: facts dated in the future: 2, up to 9999-12-31; if a clock was wrong, correct the dates in "
            "the practice log\n");
    const Fact clock = fact(6, ClockFact{ahead.device, {2126, 1, 1}, {9999, 12, 31}, 100, -3'000'000});
    scratch.put("journal/b.jsonl", lines({clock}));
    CHECK(
        check(scratch.path()).out ==
        "E215: " + path +
            ":3: facts dated in the future: 1, up to 2126-03-01; if a clock was wrong, correct the dates in "
            "the practice log\n");
    scratch.put("journal/c.jsonl",
                lines({fact(7, ClockFact{ahead.device, {2126, 1, 1}, {2126, 12, 31}, 100, -36'525})}));
    CHECK(check(scratch.path()).out == "");
    CHECK(check(path).out == "");
}

TEST_CASE("very many findings of one file are cut, but never a line that cannot be read") {
    const Scratch scratch;
    std::vector<Fact> runs;
    for (std::uint64_t seq = 1; seq <= 1500; ++seq) runs.push_back(run(seq, letterC, 60, Mark::clean));
    const std::string path = scratch.put("journal/a.jsonl", lines(runs) + "{\n");
    const std::string out = check(scratch.path()).out;
    CHECK(std::count(out.begin(), out.end(), '\n') == 1002);
    CHECK(out.find("E203: " + path + ":1501: ") != std::string::npos);
    CHECK(out.ends_with(
        "E216: " + path +
        ": the file has more faults than are listed: 500; correct those above and check it again\n"));
}

TEST_CASE("unreadable files are reported on standard error, and the rest is checked") {
    const Scratch scratch;
    const std::string bad = scratch.put("a.jsonl", "{\n");
    const std::string missing = scratch.path("missing.jsonl");
    const Ended end = runPiolo({"check", missing, bad});
    CHECK(end.code == 1);
    CHECK(end.err ==
          "piolo: E301: " + missing +
              ": cannot be read (No such file or directory); check the name and its permissions\n");
    CHECK(end.out == "E203: " + bad + ":1: the line is not a JSON object; it is " + kept);
}
