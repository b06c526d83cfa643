// SPDX-License-Identifier: GPL-3.0-or-later
// Clocks that disagree, are set back, change to and from daylight saving time, and pass midnight: everything
// folds in the order and on the days on which it was played.
#include "../../files/scratch_folder.h"
#include "../fakes.h"
#include "../lines/random_facts.h"
#include "core/history/notebook.h"
#include "journal/folder/journal.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <array>
#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::put;
using piolo::test::RandomFacts;
using piolo::test::ScratchFolder;
using piolo::test::seedOfTest;
using piolo::test::SetClock;

namespace {

const Id passage{0, 1};
constexpr std::int64_t hour = 3'600'000;
const std::string one(32, 'a');

Timestamp at(const char* text) { return *Timestamp::parse(text); }

FactBody aRun(Mark mark, int bpm = 60) {
    return RunFact{passage, Tempo::bpm(bpm), mark, Reason::none, RunKind::run, 4000, {}};
}

/// A practice folder, and devices that open it, play and close it.
struct Room {
    ScratchFolder scratch;
    std::shared_ptr<SetClock> clock = std::make_shared<SetClock>(at("2026-03-01T18:00:00.000+01:00"));

    [[nodiscard]] std::unique_ptr<Journal> open(const std::string& device = one) const {
        JournalPorts ports;
        ports.clock = clock;
        auto journal = Journal::open({scratch / "practice", device, scratch / "state"}, {}, std::move(ports));
        REQUIRE(journal.ok());
        return std::move(journal).value();
    }
    [[nodiscard]] std::vector<Fact> facts() const { return readFolder(scratch / "practice", one)->facts; }
    [[nodiscard]] Notebook notebook() const { return fold(facts()); }
};

std::vector<Mark> marksOf(const Notebook& notebook) {
    std::vector<Mark> marks;
    for (const auto& entry : notebook.passage(passage)->entries) marks.push_back(entry.mark);
    return marks;
}

} // namespace

TEST_CASE(
    "a device whose clock was a century ahead silences no other one: its tempo goes on where it was left") {
    const std::string two(32, 'b');
    const Room room;
    room.open()->record(PassageFact{passage, Title{"Letter C", {}}, Music{}, Tempi{}});
    const int start = room.notebook().passage(passage)->standing.tempo.thousandths() / 1000;
    const auto climb = [&](const std::string& device, int bpm) {
        const auto journal = room.open(device);
        for (int run = 0; run < 5; ++run) journal->record(aRun(Mark::clean, bpm));
    };
    room.clock->set(at("2126-03-01T18:00:00.000+01:00"));
    climb(two, start);
    room.clock->set(at("2026-03-02T18:00:00.000+01:00"));
    climb(two, start + 2); // put right, its order goes on from there
    climb(one, start + 4);
    CHECK(room.notebook().passage(passage)->standing.tempo == Tempo::bpm(start + 6));
    climb(two, start + 6);
    CHECK(room.notebook().passage(passage)->standing.tempo == Tempo::bpm(start + 8));
}

TEST_CASE(
    "devices in turn, each after the others' files came, fold as played though clocks differ by hours") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    constexpr std::array<std::int64_t, 3> wrongBy{-2 * hour, 0, 3 * hour};
    for (int round = 0; round < 20; ++round) {
        const Room room;
        std::int64_t now = at("2026-03-01T09:00:00.000+01:00").utcMillis;
        room.open()->record(PassageFact{passage, Title{"Letter C", {}}, Music{}, Tempi{}});
        std::vector<Mark> played;
        for (int session = 0; session < 8; ++session) {
            const auto who = static_cast<std::size_t>(random.number(0, 2));
            const auto journal = room.open(std::string(32, static_cast<char>('a' + who)));
            for (auto runs = random.number(1, 4); runs > 0; --runs) {
                now += random.number(1, 60'000);
                room.clock->set({now + wrongBy[who], 60});
                played.push_back(random.coin() ? Mark::clean : Mark::missed);
                journal->record(aRun(played.back()));
            }
        }
        REQUIRE(marksOf(room.notebook()) == played);
        // The same lines in other files, in any order, some twice.
        auto facts = room.facts();
        const Notebook whole = room.notebook();
        for (std::size_t i = facts.size(); i > 1; --i)
            std::swap(facts[i - 1],
                      facts[static_cast<std::size_t>(random.number(0, static_cast<std::int64_t>(i) - 1))]);
        const ScratchFolder merged;
        std::array<std::string, 3> files;
        for (const Fact& fact : facts) {
            files[static_cast<std::size_t>(random.number(0, 2))] += toLine(fact) + "\n";
            if (random.coin()) files[static_cast<std::size_t>(random.number(0, 2))] += toLine(fact) + "\n";
        }
        for (std::size_t i = 0; i < files.size(); ++i)
            put(merged / ("journal/" + std::to_string(i) + ".jsonl"), files[i]);
        const auto found = readFolder(merged.path(), one);
        CHECK(found->faults.empty());
        const Notebook other = fold(found->facts);
        CHECK(marksOf(other) == played);
        CHECK(other.passage(passage)->standing == whole.passage(passage)->standing);
    }
}

TEST_CASE("a clock set back inside a streak, and over midnight, takes nothing from its order") {
    const Room room;
    {
        const auto journal = room.open();
        journal->record(PassageFact{passage, Title{"Letter C", {}}, Music{}, Tempi{}});
        for (const auto* time : {"2026-03-01T18:00:00.000+01:00", "2026-03-01T18:01:00.000+01:00",
                                 "2026-03-01T17:01:00.000+01:00", "2026-03-01T17:02:00.000+01:00"}) {
            room.clock->set(at(time));
            journal->record(aRun(Mark::clean));
        }
    }
    room.clock->set(at("2026-02-28T23:00:00.000+01:00")); // a day too early; then the program restarts
    room.open()->record(aRun(Mark::missed));
    const Notebook notebook = room.notebook();
    const auto* record = notebook.passage(passage);
    REQUIRE(record->entries.size() == 5);
    CHECK(record->entries[3].after.streak == 4);
    CHECK(record->entries[4].mark == Mark::missed);
    CHECK(record->entries[4].at.date() == Date{2026, 2, 28});
}

TEST_CASE("the hour that daylight saving repeats stays in order, and the day is one day") {
    // Source: Directive 2000/84/EC: summer time ends at 01:00 UTC on the last Sunday of October, in 2026 the
    // 25th, and begins at 01:00 UTC on the last Sunday of March, the 29th.
    const Room room;
    {
        const auto journal = room.open();
        journal->record(PassageFact{passage, Title{"Letter C", {}}, Music{}, Tempi{}});
        for (const auto* time : {"2026-10-25T02:20:00.000+02:00", "2026-10-25T02:50:00.000+02:00",
                                 "2026-10-25T02:10:00.000+01:00", "2026-10-25T02:40:00.000+01:00"}) {
            room.clock->set(at(time));
            journal->record(aRun(Mark::clean));
        }
    }
    const Notebook notebook = room.notebook();
    const auto* record = notebook.passage(passage);
    REQUIRE(record->entries.size() == 4);
    CHECK(record->standing.streak == 4);
    CHECK(record->entries[1].at == at("2026-10-25T02:50:00.000+02:00"));
    CHECK(record->entries[2].at == at("2026-10-25T02:10:00.000+01:00"));
    CHECK(notebook.day({2026, 10, 25}, passage).runs == 4);
}

TEST_CASE("the hour that daylight saving leaves out breaks no streak") {
    const Room room;
    {
        const auto journal = room.open();
        journal->record(PassageFact{passage, Title{"Letter C", {}}, Music{}, Tempi{}});
        room.clock->set(at("2026-03-29T01:59:59.999+01:00"));
        journal->record(aRun(Mark::clean));
        room.clock->set(at("2026-03-29T03:00:00.000+02:00"));
        journal->record(aRun(Mark::clean));
    }
    const auto facts = room.facts();
    CHECK(facts[2].order == facts[1].order + 1);
    CHECK(room.notebook().passage(passage)->standing.streak == 2);
}

TEST_CASE("a run before midnight and one after are of two days, by the local date where they were recorded") {
    const Room room;
    {
        const auto journal = room.open();
        journal->record(PassageFact{passage, Title{"Letter C", {}}, Music{}, Tempi{}});
        for (const auto* time : {"2026-03-01T23:59:58.000+01:00", "2026-03-01T23:59:59.999+01:00",
                                 "2026-03-02T00:00:00.000+01:00",    // still the 1st in UTC
                                 "2026-03-01T23:30:00.000+00:00"}) { // half an hour later, one time zone to
                                                                     // the west
            room.clock->set(at(time));
            journal->record(aRun(Mark::clean));
        }
    }
    const Notebook notebook = room.notebook();
    const auto& entries = notebook.passage(passage)->entries;
    REQUIRE(entries.size() == 4);
    CHECK(entries[1].after.streak == 2);
    CHECK(entries[2].after.streak == 1);
    CHECK(entries[3].after.streak == 1);
    CHECK(notebook.day({2026, 3, 1}, passage).runs == 3);
    CHECK(notebook.day({2026, 3, 2}, passage).runs == 1);
}
