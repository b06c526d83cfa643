// SPDX-License-Identifier: GPL-3.0-or-later
// Checksums: what they detect; and the fast way to read a line always gives the same result as the general
// one.
#include "journal/lines/line_sum.h"

#include "../../files/scratch_folder.h"
#include "bare_line.h"
#include "journal/folder/practice_folder.h"
#include "journal/lines/crc32.h"
#include "random_facts.h"

#include <algorithm>
#include <cstdlib>
#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::contentOf;
using piolo::test::put;
using piolo::test::RandomFacts;
using piolo::test::ScratchFolder;
using piolo::test::seedOfTest;
using piolo::test::withoutSum;

namespace {

/// The most frequent kinds, which the fast way reads (run, late, tempo, back), and one that it does not.
std::vector<Fact> someFacts(RandomFacts& random) {
    std::vector<Fact> facts;
    for (const std::size_t kind : {0U, 1U, 3U, 4U, 5U}) facts.push_back(random.fact(kind));
    return facts;
}

char changed(char byte, int by) { return static_cast<char>(static_cast<unsigned char>(byte) ^ by); }

/// The index of the line of a journal that contains the byte at `at`, from 0; a newline belongs to the line
/// it ends.
std::size_t lineAt(const std::string& journal, std::size_t at) {
    return static_cast<std::size_t>(
        std::count(journal.begin(), journal.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

} // namespace

TEST_CASE("the sum is CRC-32") {
    // Source: the check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms, as printed
    // with the definitions of zlib and PNG: the checksum of the digits 1 to 9 is CBF43926.
    CHECK(crc32("123456789") == 0xCBF4'3926U);
    CHECK(crc32("") == 0);
    CHECK(withSum("123456789}") == R"(123456789,"sum":"cbf43926"})");
}

TEST_CASE("every line that is written has the sum that Python's zlib finds") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    std::string lines;
    for (std::size_t i = 0; i < 450; ++i) lines += toLine(random.fact(i % 9)) + "\n";
    const ScratchFolder folder;
    put(folder / "lines", lines);
    const std::string command = "python3 '" PIOLO_SOURCE_DIR "/tests/journal/wrong_sums.py' '" +
                                (folder / "lines") + "' > '" + (folder / "out") + "'";
    CHECK(std::system(command.c_str()) == 0); // NOLINT(cert-env33-c)
    CHECK(contentOf(folder / "out") == "450 lines\n");
}

TEST_CASE("whatever becomes of one byte of a line, it is a fault or the same fact, never another") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    long same = 0;
    const auto facts = someFacts(random);
    for (const Fact& fact : facts) {
        const std::string good = toLine(fact);
        const int step = &fact == &facts[0] ? 1 : 7; // every second value in a run's line, some in the others
        for (std::size_t at = 0; at < good.size(); ++at)
            for (int by = 1; by < 256; by += step) {
                std::string line = good;
                line[at] = changed(line[at], by);
                const auto read = fromLine(line, {});
                if (!read) continue;
                CAPTURE(line);
                REQUIRE(*read == fact);
                ++same;
            }
    }
    CHECK(same > 0); // in the name of the key "sum" itself
}

TEST_CASE("a flipped bit at every place of a journal costs its own line, a newline's two, and is reported by "
          "number") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    const auto facts = someFacts(random);
    std::string journal;
    for (const Fact& fact : facts) journal += toLine(fact) + "\n";
    const ScratchFolder folder;
    const std::string path = folder / "x.jsonl";
    for (std::size_t at = 0; at < journal.size(); ++at)
        for (int bit = 0; bit < 8; ++bit) {
            std::string flipped = journal;
            flipped[at] = changed(flipped[at], 1 << bit);
            put(path, flipped);
            const auto found = readJournalFile(path, "");
            REQUIRE(found.ok());
            CAPTURE(at);
            CAPTURE(bit);
            const std::size_t hit = lineAt(journal, at);
            const bool joined = journal[at] == '\n' && at + 1 < journal.size();
            auto left = facts;
            const auto first = left.begin() + static_cast<std::ptrdiff_t>(hit);
            left.erase(first, first + (joined ? 2 : 1));
            const bool whole = found->facts == facts && found->faults.empty();
            if (!whole) REQUIRE(found->facts == left);
            if (!whole) REQUIRE_FALSE(found->faults.empty());
            for (const Fault& fault : found->faults)
                REQUIRE(fault.location.line >= static_cast<long>(hit) + 1);
        }
}

TEST_CASE("a wrong sum is reported as such, and nothing of its line counts") {
    RandomFacts random(seedOfTest());
    Fact fact = random.fact(0);
    fact.order = 4000;
    std::string line = toLine(fact);
    line.replace(line.find(R"("order":4000)") + 8, 4, "9000");
    const FaultLocation location{"x.jsonl", 1};
    CHECK(fromLine(line, location).fault() == Fault{FaultNumber::wrongSum, location, {}});
    const ScratchFolder folder;
    put(folder / "x.jsonl", line + "\n");
    CHECK(readJournalFile(folder / "x.jsonl", fact.device)->highest.order == 0);
}

TEST_CASE("a line without a checksum, or with one that is not its last key, is accepted as it is") {
    RandomFacts random(seedOfTest());
    for (std::size_t kind = 0; kind < 9; ++kind) {
        const Fact fact = random.fact(kind);
        const std::string bare = withoutSum(toLine(fact));
        CHECK(fromLine(bare, {}).value() == fact);
        CHECK(fromLine(R"({"sum":"00000000",)" + bare.substr(1), {}).value() == fact);
        CHECK(fromLine(bare.substr(0, bare.size() - 1) + R"(,"sum": "00000000"})", {}).value() == fact);
    }
}

TEST_CASE("a newer format may use a different checksum") {
    std::string line = toLine(RandomFacts(seedOfTest()).fact(0));
    line.replace(line.find(R"("v":1)"), 5, R"("v":2)");
    CHECK(fromLine(line, {}).fault().number == FaultNumber::newerFormat);
}

TEST_CASE(
    "the short way to read a line gives what the long way gives, also for lines put together at random") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    constexpr std::string_view pieces = "0123456789abcAZ\"\\{}[]:,.-+ eTt";
    long facts = 0;
    for (int round = 0; round < 4000; ++round)
        for (const std::size_t kind : {0U, 1U, 3U, 4U}) {
            std::string bare = withoutSum(toLine(random.fact(kind)));
            for (auto changes = random.number(0, 2); changes > 0; --changes) {
                const auto at =
                    static_cast<std::size_t>(random.number(0, static_cast<std::int64_t>(bare.size()) - 2));
                const char piece = pieces[static_cast<std::size_t>(
                    random.number(0, static_cast<std::int64_t>(pieces.size()) - 1))];
                if (random.coin())
                    bare[at] = piece;
                else
                    bare.insert(at, 1, piece);
            }
            // Without a checksum, every line is read in the general way.
            const auto longWay = fromLine(bare, {});
            const auto shortWay = fromLine(withSum(bare), {});
            CAPTURE(bare);
            REQUIRE(shortWay.ok() == longWay.ok());
            if (longWay) REQUIRE(*shortWay == *longWay);
            if (!longWay) REQUIRE(shortWay.fault() == longWay.fault());
            facts += longWay ? 1 : 0;
        }
    CHECK(facts > 4000);
}
