// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/practice_folder.h"

#include "../../files/scratch_folder.h"
#include "../lines/random_facts.h"
#include "core/history/notebook.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <sys/stat.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::put;
using piolo::test::RandomFacts;
using piolo::test::ScratchFolder;
using piolo::test::seedOfTest;

namespace {

const std::string own(32, 'a');
const std::string other(32, 'b');
constexpr std::int64_t now = 1'772'384'645'123;
constexpr std::int64_t day = 86'400'000;

std::string ownPath(const ScratchFolder& folder) { return folder / ("journal/" + own + "-2026.jsonl"); }

Fact run(std::uint64_t number, const std::string& device, std::int64_t order) {
    return {{8, number}, device,
            number,      order,
            {now, 60},   RunFact{{0, 1}, Tempo::bpm(80), Mark::clean, Reason::none, RunKind::run, 4000, {}}};
}

/// `count` runs, the first lines of a journal.
std::vector<Fact> runs(std::uint64_t count, const std::string& device = own) {
    std::vector<Fact> facts;
    for (std::uint64_t i = 1; i <= count; ++i)
        facts.push_back(run(i, device, now + static_cast<std::int64_t>(i)));
    return facts;
}

std::string text(const std::vector<Fact>& facts) {
    std::string lines;
    for (const auto& fact : facts) lines += toLine(fact) + "\n";
    return lines;
}

FolderContents contentsOf(const ScratchFolder& folder, const std::string& device = own) {
    auto read = readFolder(folder.path(), device);
    REQUIRE(read.ok());
    return std::move(read).value();
}

FolderContents contentsOf(const std::string& file, const std::string& content) {
    const ScratchFolder folder;
    put(folder / ("journal/" + file), content);
    auto found = contentsOf(folder);
    for (auto& fault : found.faults)
        fault.location.file = std::filesystem::path(fault.location.file).filename();
    return found;
}

std::vector<Fact> sorted(std::vector<Fact> facts) {
    std::sort(facts.begin(), facts.end(), standsBefore);
    facts.erase(std::unique(facts.begin(), facts.end()), facts.end());
    return facts;
}

} // namespace

TEST_CASE("a folder without journal/ is empty; a path that is not a folder is reported") {
    const ScratchFolder folder;
    CHECK(contentsOf(folder).facts.empty());
    put(folder / "file", "");
    const auto file = readFolder(folder / "file", own);
    REQUIRE_FALSE(file.ok());
    CHECK(file.fault() == Fault{FaultNumber::notAPracticeFolder, {folder / "file", 0}, {}});
    const auto missing = readFolder(folder / "none", own);
    REQUIRE_FALSE(missing.ok());
    CHECK(missing.fault() ==
          Fault{FaultNumber::cannotRead, {folder / "none", 0}, {"No such file or directory"}});
}

TEST_CASE("every prefix of a journal gives the facts whose lines are whole, and at most one torn line") {
    const auto facts = runs(4);
    const std::string whole = text(facts);
    for (std::size_t length = 0; length <= whole.size(); ++length) {
        const std::string prefix = whole.substr(0, length);
        const auto found = contentsOf(own + "-2026.jsonl", prefix);
        const auto ends = static_cast<std::size_t>(std::count(prefix.begin(), prefix.end(), '\n'));
        // A line without its newline is already complete.
        const bool wholeWithout = length < whole.size() && length > 0 && whole[length] == '\n';
        const auto good = ends + (wholeWithout ? 1 : 0);
        CAPTURE(length);
        CHECK(found.facts == std::vector<Fact>(facts.begin(), facts.begin() + static_cast<long>(good)));
        const bool closed = prefix.empty() || prefix.ends_with('\n');
        CHECK(found.unclosed.size() == (closed ? 0 : 1));
        if (closed || wholeWithout)
            CHECK(found.faults.empty());
        else
            CHECK(found.faults ==
                  std::vector<Fault>{
                      {FaultNumber::tornLine, {own + "-2026.jsonl", static_cast<long>(ends) + 1}, {}}});
    }
}

TEST_CASE("a bad line in the middle is skipped and reported with its number; all others count") {
    const auto facts = runs(3);
    const std::string content = toLine(facts[0]) + "\n{\"v\":1,\"ki\n\n" + toLine(facts[1]) + "\n" +
                                toLine(facts[2]).replace(5, 1, "9") + "\n\xFF\n" + toLine(facts[2]) + "\n";
    const auto found = contentsOf("x.jsonl", content);
    CHECK(found.facts == facts);
    CHECK(found.faults == std::vector<Fault>{{FaultNumber::badJson, {"x.jsonl", 2}, {}},
                                             {FaultNumber::newerFormat, {"x.jsonl", 5}, {"9"}},
                                             {FaultNumber::notUtf8, {"x.jsonl", 6}, {}}});
}

TEST_CASE("reading changes no byte") {
    const ScratchFolder folder;
    const std::string content = text(runs(2)) + "{\"torn";
    put(ownPath(folder), content);
    contentsOf(folder);
    CHECK(piolo::test::contentOf(ownPath(folder)) == content);
    CHECK(folder.names() == std::vector<std::string>{"journal"});
}

TEST_CASE("another device's last line without a newline is reported only if incomplete, and is not closed") {
    const auto facts = runs(2, other);
    const std::string line = toLine(facts[1]);
    const auto torn = contentsOf(other + "-2026.jsonl", text(facts) + line.substr(0, 40));
    CHECK(torn.facts == facts);
    CHECK(torn.faults == std::vector<Fault>{{FaultNumber::tornLine, {other + "-2026.jsonl", 3}, {}}});
    CHECK(torn.unclosed.empty());
    const auto whole = contentsOf(other + "-2026.jsonl", toLine(facts[0]) + "\n" + line);
    CHECK(whole.facts == facts);
    CHECK(whole.faults.empty());
    CHECK(whole.unclosed.empty());
}

TEST_CASE("a complete last line in a newer format has that fault, torn or not") {
    const auto found = contentsOf(own + "-2026.jsonl", R"({"v":2,"kind":"run"})");
    CHECK(found.faults == std::vector<Fault>{{FaultNumber::newerFormat, {own + "-2026.jsonl", 1}, {"2"}}});
    CHECK(found.unclosed.size() == 1);
}

TEST_CASE("line ends of other systems and a byte order mark are accepted") {
    const auto facts = runs(2);
    const auto found =
        contentsOf("x.jsonl", "\xEF\xBB\xBF" + toLine(facts[0]) + "\r\n\r\n" + toLine(facts[1]) + "\r\n");
    CHECK(found.facts == facts);
    CHECK(found.faults.empty());
}

TEST_CASE("a line that is too long is reported, and later ones count") {
    const auto facts = runs(2);
    const std::string longLine(3 * longestLine, 'x');
    const auto found =
        contentsOf("x.jsonl", toLine(facts[0]) + "\n" + longLine + "\n" + toLine(facts[1]) + "\n");
    CHECK(found.facts == facts);
    CHECK(found.faults == std::vector<Fault>{{FaultNumber::lineTooLong, {"x.jsonl", 2}, {}}});
    const std::string longest = toLine(facts[0]) + std::string(longestLine - toLine(facts[0]).size(), ' ');
    CHECK(contentsOf("x.jsonl", longest + "\n").facts.size() == 1);
    CHECK(contentsOf("x.jsonl", longest + " \n").faults.size() == 1);
}

TEST_CASE("two devices' files, conflict copies and merged files give the same notebook in any order") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    std::vector<Fact> ownFacts;
    std::vector<Fact> otherFacts;
    for (std::size_t i = 0; i < 60; ++i) (i % 2 ? ownFacts : otherFacts).push_back(random.fact(i % 9));
    const auto conflictCopy = std::vector<Fact>(ownFacts.begin(), ownFacts.begin() + 20);
    auto all = ownFacts;
    all.insert(all.end(), otherFacts.begin(), otherFacts.end());

    const ScratchFolder apart;
    put(ownPath(apart), text(ownFacts));
    put(apart / ("journal/" + own + "-2026 (conflict of Sunday).jsonl"), text(conflictCopy));
    put(apart / ("journal/" + other + "-2026.jsonl"), text(otherFacts));
    const ScratchFolder swapped;
    put(swapped / ("journal/0.jsonl"), text(otherFacts));
    put(swapped / ("journal/1.jsonl"), text(ownFacts));
    const ScratchFolder merged;
    std::shuffle(all.begin(), all.end(), std::mt19937(seed));
    put(merged / "journal/all.jsonl", text(all));

    const auto expected = sorted(all);
    for (const auto* folder : {&apart, &swapped, &merged}) {
        const auto found = contentsOf(*folder);
        CHECK(found.faults.empty());
        CHECK(sorted(found.facts) == expected);
        CHECK(fold(found.facts).factCount() == expected.size());
    }
    CHECK(contentsOf(apart).facts.size() == all.size() + conflictCopy.size());
}

TEST_CASE("only *.jsonl in journal/ is read") {
    const ScratchFolder folder;
    put(folder / "journal/a.jsonl.tmp", "garbage\n");
    put(folder / "journal/notes.txt", "garbage\n");
    put(folder / "takes/a.jsonl", "garbage\n");
    put(folder / "journal/b.jsonl", text(runs(1)));
    const auto found = contentsOf(folder);
    CHECK(found.facts == runs(1));
    CHECK(found.faults.empty());
}

TEST_CASE("anything but a regular file is reported, and the others are read") {
    const ScratchFolder folder;
    put(folder / "journal/b.jsonl", text(runs(1)));
    std::filesystem::create_directory(folder / "journal/a.jsonl");
    REQUIRE(::mkfifo((folder / "journal/c.jsonl").c_str(), 0600) == 0);
    std::filesystem::create_symlink("nowhere", folder / "journal/d.jsonl");
    const auto found = contentsOf(folder);
    CHECK(found.facts == runs(1));
    CHECK(found.faults ==
          std::vector<Fault>{
              {FaultNumber::cannotRead, {folder / "journal/a.jsonl", 0}, {"Is a directory"}},
              {FaultNumber::cannotRead, {folder / "journal/c.jsonl", 0}, {"Invalid argument"}},
              {FaultNumber::cannotRead, {folder / "journal/d.jsonl", 0}, {"No such file or directory"}}});
}

TEST_CASE("an id that comes again with other content is reported, and the first in the files' order counts") {
    auto changed = run(1, own, now + 1);
    std::get<RunFact>(changed.body).mark = Mark::missed;
    const auto found = contentsOf("x.jsonl", text({run(1, own, now + 1), run(1, own, now + 1), changed}));
    CHECK(found.facts == std::vector<Fact>{run(1, own, now + 1), run(1, own, now + 1)});
    CHECK(
        found.faults ==
        std::vector<Fault>{{FaultNumber::repeatedId, {"x.jsonl", 3}, {"00000000000000080000000000000001"}}});
}

TEST_CASE("the highest order is that of any device, the highest seq that of the own one") {
    const auto found = contentsOf("x.jsonl", text({run(1, own, now - day), run(7, other, now + 900 * day),
                                                   run(4, own, now + 9 * day)}));
    CHECK(found.highest.order == now + 900 * day);
    CHECK(found.highest.ownSeq == 4);
}

TEST_CASE("facts of a newer format and of unknown kinds still count for order and seq") {
    const auto found = contentsOf("x.jsonl", R"({"v":2,"device":")" + own + R"(","seq":70,"order":800})" +
                                                 "\n" + R"({"v":1,"device":")" + own +
                                                 R"(","seq":60,"order":900,"kind":"lesson"})" + "\n");
    CHECK(found.faults.size() == 2);
    CHECK(found.highest.ownSeq == 70);
    CHECK(found.highest.order == 900);
}

TEST_CASE("of a file with very many faults a thousand are kept, and one says how many more there are") {
    std::string lines;
    for (int line = 0; line < 2500; ++line)
        lines += line % 2 == 0 ? "x\n" : toLine(run(1, own, now + 1)) + "\n";
    auto changed = run(1, own, now + 1);
    std::get<RunFact>(changed.body).mark = Mark::missed;
    for (int line = 0; line < 10; ++line) lines += toLine(changed) + "\n"; // repeat the id
    const auto found = contentsOf("x.jsonl", lines);
    CHECK(found.facts.size() == 1250);
    REQUIRE(found.faults.size() == mostFaultsInFile + 1);
    CHECK(found.faults[999] == Fault{FaultNumber::badJson, {"x.jsonl", 1999}, {}});
    CHECK(found.faults.back() == Fault{FaultNumber::moreFaults, {"x.jsonl", 0}, {"260"}});
}

TEST_CASE("one file is read like a folder") {
    const ScratchFolder folder;
    put(ownPath(folder), text(runs(2)) + "x");
    const auto found = readJournalFile(ownPath(folder), own);
    REQUIRE(found.ok());
    CHECK(found->facts == runs(2));
    CHECK(found->faults == std::vector<Fault>{{FaultNumber::tornLine, {ownPath(folder), 3}, {}}});
    CHECK_FALSE(readJournalFile(folder / "none.jsonl", own).ok());
}

TEST_CASE("large files, which are read concurrently, give the same as small ones") {
    constexpr std::uint64_t perFile = 4500; // more than a megabyte
    const ScratchFolder folder;
    const auto all = runs(3 * perFile);
    for (std::uint64_t file = 0; file < 3; ++file) {
        const auto* const first = all.data() + file * perFile;
        auto lines = text({first, first + perFile});
        if (file == 1) lines += "{]\n" + toLine(run(1, other, now)) + "\nno JSON\n";
        REQUIRE(lines.size() > 1'000'000);
        put(folder / ("journal/" + own + "-202" + std::to_string(6 + file) + ".jsonl"), lines);
    }
    const auto found = contentsOf(folder);
    CHECK(found.facts == all);
    CHECK(found.highest.ownSeq == 3 * perFile);
    std::vector<std::pair<FaultNumber, long>> reported;
    for (const auto& fault : found.faults) reported.emplace_back(fault.number, fault.location.line);
    const long last = perFile;
    CHECK(reported == std::vector<std::pair<FaultNumber, long>>{{FaultNumber::badJson, last + 1},
                                                                {FaultNumber::repeatedId, last + 2},
                                                                {FaultNumber::badJson, last + 3}});
}
