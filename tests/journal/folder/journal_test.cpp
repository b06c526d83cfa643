// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/journal.h"

#include "../../files/scratch_folder.h"
#include "../fakes.h"
#include "../lines/random_facts.h"
#include "journal/folder/folder_lock.h"
#include "journal/lines/fact_line.h"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <thread>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::contentOf;
using piolo::test::CountedIds;
using piolo::test::put;
using piolo::test::RandomFacts;
using piolo::test::ScratchFolder;
using piolo::test::seedOfTest;
using piolo::test::SetClock;

namespace {

const std::string own(32, 'a');
constexpr std::int64_t day = 86'400'000;
constexpr int longEnough = 60'000;

Timestamp at(const char* text) { return *Timestamp::parse(text); }

/// A practice folder and a state directory for one test.
struct Room {
    ScratchFolder scratch;
    std::string folder = scratch / "practice";
    std::shared_ptr<SetClock> clock = std::make_shared<SetClock>(at("2026-03-01T18:00:00.000+01:00"));

    [[nodiscard]] std::unique_ptr<Journal> open(JournalHearer hearer = {},
                                                const std::string& device = own) const {
        JournalPorts ports;
        ports.clock = clock;
        auto journal =
            Journal::open({folder, device, scratch / "state"}, std::move(hearer), std::move(ports));
        REQUIRE(journal.ok());
        return std::move(journal).value();
    }
    [[nodiscard]] std::string file(const std::string& year) const {
        return folder + "/journal/" + own + "-" + year + ".jsonl";
    }
};

FactBody aRun() { return RunFact{{0, 1}, Tempo::bpm(80), Mark::clean, Reason::none, RunKind::run, 4000, {}}; }

} // namespace

TEST_CASE("recorded facts are there again, in order, when the folder is next opened") {
    const Room room;
    std::vector<Fact> recorded;
    {
        const auto journal = room.open();
        CHECK(journal->contents().facts.empty());
        CHECK_FALSE(journal->readOnly());
        for (int i = 0; i < 50; ++i) recorded.push_back(journal->record(aRun()));
    }
    const auto journal = room.open();
    CHECK(journal->contents().facts == recorded);
    CHECK(journal->contents().faults.empty());
    CHECK(journal->record(aRun()).seq == 51);
}

TEST_CASE("a fact gets its id, device, seq, order and time at once") {
    const Room room;
    const auto journal = room.open();
    const Fact first = journal->record(aRun());
    const Fact second = journal->record(aRun());
    CHECK_FALSE(first.id.isNone());
    CHECK(first.id != second.id);
    CHECK(first.device == own);
    CHECK(first.seq == 1);
    CHECK(second.seq == 2);
    CHECK(first.at == room.clock->now());
    CHECK(first.order == first.at.utcMillis);
    CHECK(second.order == first.order + 1);
}

TEST_CASE("a clock set back never reorders what was played") {
    const Room room;
    const auto journal = room.open();
    const auto before = journal->record(aRun()).order;
    room.clock->set(at("2026-02-01T18:00:00.000+01:00"));
    CHECK(journal->record(aRun()).order == before + 1);
    room.clock->set(at("2026-03-01T18:00:09.000+01:00"));
    CHECK(journal->record(aRun()).order == before + 9000);
}

TEST_CASE("the own order goes on after the program has ended, also when it lies far ahead") {
    const Room room;
    room.clock->set(at("2028-01-01T12:00:00.000+01:00"));
    const auto ahead = room.open()->record(aRun()).order;
    room.clock->set(at("2026-03-01T18:00:00.000+01:00"));
    CHECK(room.open()->record(aRun()).order == ahead + 1);
}

TEST_CASE("another device's order is followed, however far ahead it is") {
    const std::string other(32, 'b');
    for (const std::int64_t ahead :
         {std::int64_t{0}, std::int64_t{5000}, day, day + 1, 900 * day, 36'500 * day}) {
        const Room room;
        const auto now = room.clock->now().utcMillis;
        const Fact theirs{{8, 8}, other, 1, now + ahead, room.clock->now(), aRun()};
        put(room.folder + "/journal/" + other + "-2026.jsonl", toLine(theirs) + "\n");
        CAPTURE(ahead);
        CHECK(room.open()->record(aRun()).order == now + ahead + 1);
    }
}

TEST_CASE("the highest numbers that a line can have are not exceeded") {
    const Room room;
    constexpr std::uint64_t mostSeq = 9'007'199'254'740'991;
    constexpr std::int64_t mostOrder = 253'402'300'799'999; // 9999-12-31T23:59:59.999Z
    CHECK(Timestamp{mostOrder, 0}.text() == "9999-12-31T23:59:59.999+00:00");
    const Fact last{{8, 8}, own, mostSeq, mostOrder, room.clock->now(), aRun()};
    put(room.file("2026"), toLine(last) + "\n");
    room.open()->record(aRun());
    CHECK(room.open()->contents().facts.size() == 2);
}

TEST_CASE("a new year opens a new file, by the local date") {
    const Room room;
    {
        const auto journal = room.open();
        room.clock->set(at("2026-12-31T23:59:59.999+01:00"));
        journal->record(aRun());
        room.clock->set(at("2027-01-01T00:00:00.000+01:00")); // still 2026 in UTC
        journal->record(aRun());
    }
    CHECK(readJournalFile(room.file("2026"), own)->facts.size() == 1);
    CHECK(readJournalFile(room.file("2027"), own)->facts.size() == 1);
    CHECK(room.open()->contents().facts.size() == 2);
}

TEST_CASE("a second opener is read-only, says so, and writes nothing") {
    const Room room;
    const auto first = room.open();
    first->record(aRun());
    REQUIRE(first->flush(longEnough));
    const auto second = room.open();
    CHECK(second->readOnly());
    CHECK(second->readOnlyReason().number == FaultNumber::folderInUse);
    CHECK(second->contents().facts.size() == 1);
    const std::string before = contentOf(room.file("2026"));
    const Fact fact = second->record(aRun());
    CHECK_FALSE(fact.id.isNone());
    CHECK(second->unsaved() == 0);
    CHECK(second->flush(0));
    CHECK(contentOf(room.file("2026")) == before);
}

TEST_CASE("a read-only journal leaves even a torn line as it is, and makes no folder") {
    const Room room;
    put(room.file("2026"), "{\"torn");
    auto lock = FolderLock::take(room.folder, own, room.scratch / "state");
    REQUIRE(lock.ok());
    CHECK(room.open()->readOnly());
    CHECK(contentOf(room.file("2026")) == "{\"torn");
    std::filesystem::remove_all(room.folder + "/journal");
    CHECK(room.open()->readOnly());
    CHECK_FALSE(std::filesystem::exists(room.folder + "/journal"));
}

TEST_CASE("on a disk without locks the folder is read, not written, and the reason is there") {
    const Room room;
    room.open()->record(aRun());
    for (const int error : {ENOLCK, EOPNOTSUPP, ENOSYS}) {
        static int failure = 0;
        failure = error;
        JournalPorts ports;
        ports.lock = [](int /*file*/, int /*operation*/) {
            errno = failure;
            return -1;
        };
        const auto opened = Journal::open({room.folder, own, room.scratch / "state"}, {}, ports);
        REQUIRE(opened.ok());
        CHECK(opened.value()->readOnly());
        CHECK(opened.value()->readOnlyReason() ==
              Fault{FaultNumber::noLocks, {room.scratch / "state", 0}, {}});
        CHECK(opened.value()->contents().facts.size() == 1);
        const std::string before = contentOf(room.file("2026"));
        opened.value()->record(aRun());
        CHECK(contentOf(room.file("2026")) == before);
    }
}

TEST_CASE("the lock is released when its holder closes") {
    const Room room;
    CHECK_FALSE(room.open()->readOnly());
    CHECK_FALSE(room.open()->readOnly());
}

TEST_CASE("one lock for all spellings of a folder's path, another for another device or folder") {
    const ScratchFolder scratch;
    std::filesystem::create_directories(scratch / "band/practice");
    std::filesystem::create_symlink("band", scratch / "link");
    const auto path = [&scratch](const std::string& folder, const std::string& device) {
        return FolderLock::path(folder, device, scratch / "state");
    };
    const auto usual = path(scratch / "band/practice", own);
    CHECK(usual.starts_with(scratch / "state/locks/"));
    CHECK(usual.ends_with("-" + own + ".lock"));
    CHECK(path(scratch / "band/practice/", own) == usual);
    CHECK(path(scratch / "link/practice", own) == usual);
    CHECK(path(scratch / "band/../band/./practice", own) == usual);
    CHECK(path(scratch / "band", own) != usual);
    CHECK(path(scratch / "band/practice", std::string(32, 'b')) != usual);
}

TEST_CASE("the folder's hash is 64-bit FNV-1a") {
    // Source: FNV-1a as defined by Fowler, Noll and Vo, computed separately: (cbf29ce484222325 xor 2f) ·
    // 100000001b3 modulo 2^64 for the path "/".
    CHECK(FolderLock::path("/", own, "/s") == "/s/locks/af63a24c860189fe-" + own + ".lock");
}

TEST_CASE("two devices write to one folder at the same time") {
    const Room room;
    const auto mine = room.open();
    const auto theirs = room.open({}, std::string(32, 'b'));
    CHECK_FALSE(mine->readOnly());
    CHECK_FALSE(theirs->readOnly());
    mine->record(aRun());
    theirs->record(aRun());
    CHECK(mine->flush(longEnough));
    CHECK(theirs->flush(longEnough));
    CHECK(readFolder(room.folder, own)->facts.size() == 2);
}

TEST_CASE("a device's own torn last line is closed with a newline, kept and reported") {
    const Room room;
    room.open()->record(aRun());
    const std::string good = contentOf(room.file("2026"));
    put(room.file("2026"), good + "{\"v\":1,\"id");
    {
        const auto journal = room.open();
        CHECK(journal->contents().facts.size() == 1);
        CHECK(journal->contents().faults ==
              std::vector<Fault>{{FaultNumber::tornLine, {room.file("2026"), 2}, {}}});
        CHECK(contentOf(room.file("2026")) == good + "{\"v\":1,\"id\n");
        journal->record(aRun());
    }
    const auto journal = room.open();
    CHECK(journal->contents().facts.size() == 2);
    CHECK(journal->contents().faults ==
          std::vector<Fault>{{FaultNumber::badJson, {room.file("2026"), 2}, {}}});
}

TEST_CASE(
    "a device's own last line that is whole except for its newline counts and gets it; last year's too") {
    const Room room;
    const Fact fact = room.open()->record(aRun());
    put(room.file("2026"), toLine(fact));
    Fact older = fact;
    older.id = {5, 5};
    put(room.file("2025"), toLine(older));
    const auto journal = room.open();
    CHECK(journal->contents().facts.size() == 2);
    CHECK(journal->contents().faults.empty());
    CHECK(contentOf(room.file("2026")) == toLine(fact) + "\n");
    CHECK(contentOf(room.file("2025")) == toLine(older) + "\n");
}

TEST_CASE("another device's torn line is left alone") {
    const Room room;
    const std::string theirs = room.folder + "/journal/" + std::string(32, 'b') + "-2026.jsonl";
    const std::string copy = room.folder + "/journal/" + own + "-2026 (copy).jsonl";
    put(theirs, "{\"torn");
    put(copy, "{\"torn");
    room.open()->record(aRun());
    CHECK(contentOf(theirs) == "{\"torn");
    CHECK(contentOf(copy) == "{\"torn");
}

TEST_CASE("after any crash the next session goes on from a known good prefix") {
    const Room room;
    {
        const auto journal = room.open();
        for (int i = 0; i < 3; ++i) journal->record(aRun());
    }
    const std::string whole = contentOf(room.file("2026"));
    for (std::size_t length = 0; length <= whole.size(); length += 29) {
        put(room.file("2026"), whole.substr(0, length));
        const auto before = readFolder(room.folder, own)->facts;
        room.open()->record(aRun());
        const auto after = readFolder(room.folder, own)->facts;
        CAPTURE(length);
        REQUIRE(after.size() == before.size() + 1);
        CHECK(std::equal(before.begin(), before.end(), after.begin()));
    }
}

TEST_CASE("a folder or state directory that cannot be created is reported") {
    const ScratchFolder scratch;
    put(scratch / "file", "");
    const auto open = [](const std::string& folder, const std::string& state) {
        return Journal::open({folder, own, state}, {});
    };
    const auto folder = open(scratch / "file/practice", scratch / "state");
    REQUIRE_FALSE(folder.ok());
    CHECK(folder.fault() ==
          Fault{FaultNumber::cannotMakeFolder, {scratch / "file/practice/journal", 0}, {"Not a directory"}});
    const auto state = open(scratch / "practice", scratch / "file");
    REQUIRE_FALSE(state.ok());
    CHECK(state.fault().number == FaultNumber::cannotMakeFolder);
    CHECK_FALSE(std::filesystem::exists(scratch / "practice"));
}

TEST_CASE("record() may be called from many threads: every number once, lines in the numbers' order") {
    const Room room;
    {
        const auto journal = room.open();
        std::vector<std::thread> players;
        for (int player = 0; player < 4; ++player)
            players.emplace_back([&journal] {
                for (int i = 0; i < 100; ++i) journal->record(aRun());
            });
        for (auto& player : players) player.join();
    }
    const auto facts = readFolder(room.folder, own)->facts;
    REQUIRE(facts.size() == 400);
    for (std::size_t i = 0; i < facts.size(); ++i) CHECK(facts[i].seq == i + 1);
}

TEST_CASE("a file put in the journal's place while it is open is written on") {
    const Room room;
    const auto journal = room.open();
    journal->record(aRun());
    REQUIRE(journal->flush(longEnough));
    const std::string before = contentOf(room.file("2026"));
    put(room.scratch / "synced", before);
    std::filesystem::rename(room.scratch / "synced", room.file("2026"));
    journal->record(aRun());
    REQUIRE(journal->flush(longEnough));
    CHECK(readJournalFile(room.file("2026"), own)->facts.size() == 2);
    std::filesystem::remove_all(room.folder); // which it never makes again
    journal->record(aRun());
    CHECK_FALSE(journal->flush(50));
    CHECK_FALSE(std::filesystem::exists(room.folder));
}

TEST_CASE("every kind of recorded fact is there again when the folder is next opened") {
    const Room room;
    RandomFacts random(seedOfTest());
    std::vector<FactBody> bodies;
    for (std::size_t kind = 0; kind < std::variant_size_v<FactBody>; ++kind)
        for (int time = 0; time < 3; ++time) bodies.push_back(random.body(kind));
    {
        const auto journal = room.open();
        for (const FactBody& body : bodies) journal->record(body);
        REQUIRE(journal->flush(longEnough));
    }
    const auto journal = room.open();
    const auto& facts = journal->contents().facts;
    REQUIRE(facts.size() == bodies.size());
    for (std::size_t place = 0; place < bodies.size(); ++place) CHECK(facts[place].body == bodies[place]);
}
