// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever happens to a checkpoint, or to the journal under it, the notebook is that of a plain fold.
#include "journal/checkpoint/checkpoint.h"

#include "journal/folder/journal.h"
#include "journal/lines/fact_line.h"
#include "random_folder.h"
#include "same_notebook.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using namespace piolo::test;

namespace {

/// A random folder and its checkpoint.
struct Kept {
    explicit Kept(unsigned seed, int passages = 3, int facts = 60) : folder(seed, passages, facts) {
        REQUIRE(keep());
    }

    [[nodiscard]] std::string file() const { return checkpointFile(folder.path(), testDevice, cache.path()); }
    [[nodiscard]] bool keep() const { return writeCheckpoint(file(), folder.path(), testDevice); }

    /// Read with the checkpoint; nothing if it is not used.
    [[nodiscard]] std::optional<FolderContents> readOn() const {
        const auto known = loadCheckpoint(file(), testDevice);
        return known ? journal::readOn(folder.path(), testDevice, *known) : std::nullopt;
    }
    [[nodiscard]] FolderContents plain() const {
        auto read = readFolder(folder.path(), testDevice);
        REQUIRE(read.ok());
        return std::move(read).value();
    }
    /// True if it is used and gives the same as reading everything.
    [[nodiscard]] bool agrees() const {
        auto found = readOn();
        REQUIRE(found.has_value());
        auto all = plain();
        return sameReading(*found, all) &&
               sameNotebook(notebookOf(*std::move(found)), notebookOf(std::move(all)));
    }

    RandomFolder folder;
    ScratchFolder cache;
};

/// True if two journals that open the same folder, one of them without a cache, give the same.
bool opensAsWithout(const Kept& kept) {
    const ScratchFolder state;
    const ScratchFolder
        before; // opening ends a truncated line, so the second opening reads it back as it was
    constexpr auto over =
        std::filesystem::copy_options::recursive | std::filesystem::copy_options::overwrite_existing;
    std::filesystem::copy(kept.folder.path(), before.path(), over);
    auto with = Journal::open({kept.folder.path(), testDevice, state.path(), kept.cache.path()}, {});
    REQUIRE(with.ok());
    auto found = with.value()->contents();
    with.value().reset();
    std::filesystem::copy(before.path(), kept.folder.path(), over);
    auto without = Journal::open({kept.folder.path(), testDevice, state.path()}, {});
    REQUIRE(without.ok());
    auto all = without.value()->contents();
    return sameReading(found, all) && sameNotebook(notebookOf(std::move(found)), notebookOf(std::move(all)));
}

std::string flipped(std::string bytes, std::size_t bit) {
    bytes[bit / 8] = static_cast<char>(static_cast<unsigned char>(bytes[bit / 8]) ^ (1U << (bit % 8)));
    return bytes;
}

} // namespace

TEST_CASE("a notebook opened from a checkpoint is that of a plain fold, over random histories") {
    for (unsigned seed = seedOfTest(); seed < seedOfTest() + 25; ++seed) {
        CAPTURE(seed);
        const Kept kept(seed);
        const auto found = kept.readOn();
        REQUIRE(found.has_value());
        CHECK(found->facts.empty());
        CHECK(kept.agrees());
    }
}

TEST_CASE("what was appended since is folded on top, by whichever device and of whichever passage") {
    for (unsigned seed = seedOfTest(); seed < seedOfTest() + 25; ++seed) {
        CAPTURE(seed);
        Kept kept(seed);
        for (int times = 0; times < 3; ++times) {
            kept.folder.append(kept.folder.more());
            CHECK(kept.agrees());
        }
        const Fact elsewhere = kept.folder.more().front();
        std::string other(32, 'c');
        other += "-2026.jsonl";
        kept.folder.appendBytes(other, toLine(elsewhere) + "\n");
        CHECK(kept.agrees());
        CHECK(kept.keep());
        CHECK(kept.agrees());
    }
}

TEST_CASE("facts that are added to a notebook from a checkpoint count as in any other, known ones once") {
    for (unsigned seed = seedOfTest(); seed < seedOfTest() + 10; ++seed) {
        CAPTURE(seed);
        Kept kept(seed, 2, 40);
        Notebook notebook = notebookOf(*kept.readOn());
        Notebook plain = notebookOf(kept.plain());
        for (const Fact& fact : kept.folder.facts()) CHECK_FALSE(notebook.add(fact));
        for (const Fact& fact : kept.folder.more()) {
            CHECK(notebook.add(fact) == plain.add(fact));
            const Id passage = passageOf(fact.body);
            CHECK(notebook.backTarget(passage, fact.device) == plain.backTarget(passage, fact.device));
        }
        CHECK(sameNotebook(notebook, plain));
    }
}

TEST_CASE("lines that are not facts are the same faults, before and after the checkpoint") {
    Kept kept(seedOfTest());
    const std::string name = pitDevice + "-2026.jsonl";
    const std::string line = toLine(kept.folder.more().front());
    const std::vector<std::string> odd{"nonsense\n",
                                       "{\"v\":1}\n",
                                       "\n\n",
                                       "\r\n",
                                       "{\"v\":2,\"id\":\"" + std::string(32, 'e') + "\",\"device\":\"" +
                                           pitDevice +
                                           "\",\"seq\":9999,\"order\":1999999999000,\"kind\":\"new\"}\n",
                                       line.substr(0, 50) + "\n",
                                       std::string(longestLine + 5, 'x') + "\n"};
    for (int round = 0; round < 2; ++round) {
        for (const auto& bytes : odd) {
            kept.folder.appendBytes(name, bytes);
            CHECK(kept.agrees());
        }
        CHECK(kept.plain().faults.size() >= 5);
        REQUIRE(kept.keep());
        CHECK(kept.agrees());
    }
    // Another device's incomplete line: it is read again once it has grown.
    kept.folder.appendBytes(name, line.substr(0, 70));
    CHECK(kept.agrees());
    REQUIRE(kept.keep());
    CHECK(kept.agrees());
    kept.folder.appendBytes(name, line.substr(70));
    CHECK_FALSE(kept.readOn().has_value());
    CHECK(opensAsWithout(kept));
    REQUIRE(kept.keep());
    CHECK(kept.agrees());
    kept.folder.appendBytes(name, "\n");
    CHECK_FALSE(kept.readOn().has_value());
    CHECK(opensAsWithout(kept));
}

TEST_CASE("a checkpoint cut off anywhere, or with anything behind its end, is not used") {
    const Kept kept(seedOfTest(), 2, 30);
    const std::string whole = contentOf(kept.file());
    for (std::size_t size = 0; size < whole.size(); size += size < 200 ? 1 : 41) {
        put(kept.file(), std::string_view(whole).substr(0, size));
        CHECK_FALSE(loadCheckpoint(kept.file(), testDevice).has_value());
    }
    put(kept.file(), whole + '\0');
    CHECK_FALSE(loadCheckpoint(kept.file(), testDevice).has_value());
    CHECK(opensAsWithout(kept));
    put(kept.file(), whole);
    CHECK(kept.agrees());
}

TEST_CASE("a checkpoint with a flipped bit anywhere is not used") {
    const Kept kept(seedOfTest(), 2, 30);
    const std::string whole = contentOf(kept.file());
    for (std::size_t bit = 0; bit < whole.size() * 8; bit += bit < 1000 ? 1 : 7) {
        put(kept.file(), flipped(whole, bit));
        REQUIRE_FALSE(loadCheckpoint(kept.file(), testDevice).has_value());
    }
    CHECK(opensAsWithout(kept));
}

TEST_CASE("a checkpoint of another program, another device or of nothing is not used") {
    const Kept kept(seedOfTest());
    const std::string whole = contentOf(kept.file());
    CHECK_FALSE(loadCheckpoint(kept.file(), pitDevice).has_value());
    CHECK_FALSE(loadCheckpoint(kept.file() + ".old", testDevice).has_value());
    CHECK_FALSE(loadCheckpoint(kept.cache.path(), testDevice).has_value());
    // After the byte order: the length of the build's id, and the id.
    std::string foreign = whole;
    foreign[9] = static_cast<char>(foreign[9] + 1);
    put(kept.file(), foreign);
    CHECK_FALSE(loadCheckpoint(kept.file(), testDevice).has_value());
    std::string swapped = whole;
    std::reverse(swapped.begin(), swapped.begin() + 8);
    put(kept.file(), swapped);
    CHECK_FALSE(loadCheckpoint(kept.file(), testDevice).has_value());
    put(kept.file(), "piolo checkpoint 2\n");
    CHECK(opensAsWithout(kept));
}

TEST_CASE("the checkpoint of another folder is not used") {
    const Kept one(seedOfTest());
    const Kept two(seedOfTest() + 1);
    put(one.file(), contentOf(two.file()));
    CHECK(loadCheckpoint(one.file(), testDevice).has_value());
    CHECK_FALSE(one.readOn().has_value());
    CHECK(opensAsWithout(one));
}

TEST_CASE("a folder that was moved is opened from its checkpoint, if that is moved too, with its own paths") {
    const Kept kept(seedOfTest());
    kept.folder.appendBytes(pitDevice + "-2026.jsonl", "nonsense\n");
    REQUIRE(kept.keep());
    const ScratchFolder away;
    std::filesystem::copy(kept.folder.path(), away / "moved", std::filesystem::copy_options::recursive);
    const auto known = loadCheckpoint(kept.file(), testDevice);
    REQUIRE(known.has_value());
    const auto found = readOn(away / "moved", testDevice, *known);
    REQUIRE(found.has_value());
    CHECK(found->faults == readFolder(away / "moved", testDevice)->faults);
}

TEST_CASE("a journal that was edited anywhere under its checkpoint is read whole") {
    const Kept kept(seedOfTest(), 2, 30);
    for (const auto& name : kept.folder.files()) {
        const std::string path = kept.folder.journal(name);
        const std::string whole = contentOf(path);
        for (std::size_t bit = 0; bit < whole.size() * 8; bit += 997) {
            put(path, flipped(whole, bit));
            REQUIRE_FALSE(kept.readOn().has_value());
        }
        CHECK(opensAsWithout(kept));
        for (std::size_t size = 0; size < whole.size(); size += 331) {
            put(path, std::string_view(whole).substr(0, size));
            REQUIRE_FALSE(kept.readOn().has_value());
        }
        put(path, whole.substr(0, whole.find('\n') + 1));
        CHECK(opensAsWithout(kept));
        std::filesystem::remove(path);
        CHECK_FALSE(kept.readOn().has_value());
        CHECK(opensAsWithout(kept));
        put(kept.folder.journal("x" + name), whole);
        CHECK_FALSE(kept.readOn().has_value());
        CHECK(opensAsWithout(kept));
        std::filesystem::remove(kept.folder.journal("x" + name));
        // An unchanged modification time and size prove nothing.
        put(path, flipped(whole, 8 * (whole.size() / 2)));
        std::filesystem::last_write_time(path, std::filesystem::last_write_time(kept.file()) -
                                                   std::chrono::hours(9));
        CHECK_FALSE(kept.readOn().has_value());
        put(path, whole);
        CHECK(kept.agrees());
    }
}

TEST_CASE("conflict copies, merged files and ids that come again with other content are read whole") {
    for (const bool changed : {false, true}) {
        Kept kept(seedOfTest());
        Fact again = kept.folder.facts().front();
        if (changed) again.at.utcMillis += 1000;
        SUBCASE("in a conflict copy") { kept.folder.appendBytes("copy.jsonl", toLine(again) + "\n"); }
        SUBCASE("in a file that is read first") { kept.folder.appendBytes("0.jsonl", toLine(again) + "\n"); }
        SUBCASE("in a known file") {
            kept.folder.appendBytes(testDevice + "-2026.jsonl", toLine(again) + "\n");
        }
        CHECK_FALSE(kept.readOn().has_value());
        CHECK(kept.plain().faults.empty() != changed);
        CHECK(opensAsWithout(kept));
        REQUIRE(kept.keep());
        CHECK(kept.agrees());
    }
}

TEST_CASE("a clock fact after the checkpoint moves the days of what is in it") {
    Kept kept(seedOfTest());
    Fact clock = kept.folder.more().front();
    clock.id = {77, 1};
    clock.body = ClockFact{testDevice, {2020, 1, 1}, {2040, 1, 1}, 1'000'000, 900};
    kept.folder.append({clock});
    CHECK(kept.agrees());
    const Notebook notebook = notebookOf(*kept.readOn());
    CHECK_FALSE(notebook.datedAfter({2027, 1, 1}).empty());
    REQUIRE(kept.keep());
    CHECK(kept.agrees());
    CHECK(notebookOf(*kept.readOn()).datedAfter({2027, 1, 1}) == notebook.datedAfter({2027, 1, 1}));
}

TEST_CASE(
    "a folder whose own last line has no end yet, or with a file that cannot be read, has no checkpoint") {
    const Kept kept(seedOfTest());
    kept.folder.appendBytes(testDevice + "-2026.jsonl", "{\"v\":1");
    CHECK_FALSE(kept.keep());
    CHECK(opensAsWithout(kept));
    CHECK(kept.keep()); // opening has closed it
    std::filesystem::create_directory(kept.folder.journal("folder.jsonl"));
    CHECK_FALSE(kept.keep());
    CHECK(opensAsWithout(kept));
}
