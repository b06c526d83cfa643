// SPDX-License-Identifier: GPL-3.0-or-later
// Runs recorded on a later day than they were played.
#include "../../files/scratch_folder.h"
#include "../fakes.h"
#include "journal/folder/journal.h"

#include <doctest/doctest.h>

#include <filesystem>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::ScratchFolder;
using piolo::test::SetClock;

namespace {

const std::string own(32, 'a');

Timestamp at(const char* text) { return *Timestamp::parse(text); }

struct Room {
    ScratchFolder scratch;
    std::shared_ptr<SetClock> clock = std::make_shared<SetClock>(at("2026-01-02T18:00:00.000+01:00"));

    [[nodiscard]] std::unique_ptr<Journal> open() const {
        JournalPorts ports;
        ports.clock = clock;
        auto journal = Journal::open({scratch / "practice", own, scratch / "state"}, {}, std::move(ports));
        REQUIRE(journal.ok());
        return std::move(journal).value();
    }
};

FactBody aRun() {
    RunFact run;
    run.passage = {0, 1};
    run.entered = true;
    return run;
}

} // namespace

TEST_CASE("a fact of an earlier day has that day's last moment, and its place in the order is now") {
    const Room room;
    const auto journal = room.open();
    const Fact live = journal->record(aRun());
    const Fact entered = journal->recordOn({2025, 12, 31}, aRun());
    CHECK(entered.at == at("2025-12-31T23:59:59.999+01:00"));
    CHECK(entered.at.date() == Date{2025, 12, 31});
    CHECK(entered.order == live.order + 1);
    CHECK(entered.seq == live.seq + 1);
    CHECK(standsBefore(live, entered));
}

TEST_CASE("today and later days count as now") {
    const Room room;
    const auto journal = room.open();
    CHECK(journal->recordOn({2026, 1, 2}, aRun()).at == room.clock->now());
    CHECK(journal->recordOn({2026, 1, 3}, aRun()).at == room.clock->now());
}

TEST_CASE("a fact of last year goes into last year's file, and order and seq go on from both files") {
    const Room room;
    Fact live;
    Fact entered;
    {
        const auto journal = room.open();
        live = journal->record(aRun());
        entered = journal->recordOn({2025, 12, 31}, aRun());
    }
    const std::string folder = room.scratch / "practice/journal/";
    CHECK(std::filesystem::exists(folder + own + "-2025.jsonl"));
    CHECK(std::filesystem::exists(folder + own + "-2026.jsonl"));
    const auto journal = room.open();
    CHECK(journal->contents().faults.empty());
    CHECK(journal->contents().facts.size() == 2);
    const Fact next = journal->record(aRun());
    CHECK(next.seq == entered.seq + 1);
    CHECK(next.order > entered.order);
}
