// SPDX-License-Identifier: GPL-3.0-or-later
// The writer on a disk that fails. Whatever happens, everything recorded is on disk once per id, and is
// reported only then.
#include "../../files/scratch_folder.h"
#include "../fakes.h"
#include "journal/folder/journal.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <doctest/doctest.h>
#include <thread>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::Call;
using piolo::test::CountedIds;
using piolo::test::FakeDisk;
using piolo::test::Fate;
using piolo::test::put;
using piolo::test::ScratchFolder;
using piolo::test::SetClock;

namespace {

const std::string own(32, 'a');
constexpr int longEnough = 60'000;

FactBody aRun() { return RunFact{{0, 1}, Tempo::bpm(80), Mark::clean, Reason::none, RunKind::run, 4000, {}}; }

/// A journal on a fake disk, and what it reports.
class Bench {
public:
    explicit Bench(int farewell = longEnough) : farewell_(farewell) {}

    std::unique_ptr<Journal> open() {
        JournalPorts ports{clock_, std::make_shared<CountedIds>(), disk, {1, 1, farewell_}};
        JournalHearer hearer{[this](Id id) { hear(id); }, [this](const Fault& fault) { hear(fault); }};
        auto journal = Journal::open({folder, own, scratch_ / "state"}, std::move(hearer), std::move(ports));
        REQUIRE(journal.ok());
        return std::move(journal).value();
    }
    [[nodiscard]] std::string path(const std::string& year = "2026") const {
        return folder + "/journal/" + own + "-" + year + ".jsonl";
    }
    void setTime(const char* text) { clock_->set(*Timestamp::parse(text)); }
    [[nodiscard]] std::size_t writes() {
        const auto calls = disk->calls();
        return static_cast<std::size_t>(std::count(calls.begin(), calls.end(), Call::write));
    }
    void waitForWrites(std::size_t least) {
        while (writes() < least) std::this_thread::yield();
    }
    void waitForTrouble() {
        std::unique_lock lock(mutex_);
        heard_.wait(lock, [this] { return !troubles_.empty(); });
    }
    std::vector<Id> saved() {
        const std::lock_guard lock(mutex_);
        return saved_;
    }
    std::vector<Fault> troubles() {
        const std::lock_guard lock(mutex_);
        return troubles_;
    }
    /// True if any fact was reported as saved before its line was durable.
    bool sentTooEarly() {
        const std::lock_guard lock(mutex_);
        return tooEarly_;
    }
    /// What the next session would read after a power failure.
    FolderContents afterPowerCut() {
        const ScratchFolder left;
        put(left / "left.jsonl", disk->durable(path()));
        return readJournalFile(left / "left.jsonl", own).value();
    }

    std::shared_ptr<FakeDisk> disk = std::make_shared<FakeDisk>();

private:
    void hear(Id id) {
        const bool durable = disk->isDurable(id.text());
        const std::lock_guard lock(mutex_);
        tooEarly_ = tooEarly_ || !durable;
        saved_.push_back(id);
    }
    void hear(const Fault& fault) {
        const std::lock_guard lock(mutex_);
        troubles_.push_back(fault);
        heard_.notify_all();
    }

    ScratchFolder scratch_;
    std::string folder = scratch_ / "practice";
    std::shared_ptr<SetClock> clock_ = std::make_shared<SetClock>(Timestamp{1'772'384'645'123, 60});
    int farewell_;
    std::mutex mutex_;
    std::condition_variable heard_;
    std::vector<Id> saved_;
    std::vector<Fault> troubles_;
    bool tooEarly_ = false;
};

std::vector<Fact> onceById(std::vector<Fact> facts) {
    const auto sameId = [](const Fact& a, const Fact& b) { return a.id == b.id; };
    std::sort(facts.begin(), facts.end(), standsBefore);
    facts.erase(std::unique(facts.begin(), facts.end(), sameId), facts.end());
    return facts;
}

/// Records in five portions, each on disk before the next; the first one while nothing else waits.
std::vector<Fact> recordPortions(Journal& journal) {
    std::vector<Fact> recorded;
    for (int portion = 1; portion <= 5; ++portion) {
        for (int i = 0; i < portion; ++i) recorded.push_back(journal.record(aRun()));
        CHECK(journal.flush(longEnough));
    }
    return recorded;
}

} // namespace

TEST_CASE("whatever call fails, all is on disk once by id, and reported only then") {
    for (const Call call : {Call::open, Call::write, Call::sync})
        for (const Fate bad : {Fate::fails, Fate::half})
            for (int first = 1; first <= 5; ++first)
                for (int length = 1; length <= 3; ++length) {
                    if (bad == Fate::half && call != Call::write) continue;
                    CAPTURE(static_cast<int>(call));
                    CAPTURE(first);
                    CAPTURE(length);
                    Bench bench;
                    bench.disk->fate = [=](Call made, int number) {
                        return made == call && number >= first && number < first + length ? bad : Fate::good;
                    };
                    const auto journal = bench.open();
                    const auto recorded = recordPortions(*journal);
                    const auto left = bench.afterPowerCut();
                    CHECK(onceById(left.facts) == recorded);
                    for (const auto& fault : left.faults) CHECK(fault.number == FaultNumber::badJson);
                    CHECK(bench.saved().size() == recorded.size());
                    CHECK_FALSE(bench.sentTooEarly());
                    // If all goes well, the file is opened only once; another open, which may fail, comes
                    // only after a first failure.
                    if (call != Call::open || first == 1) CHECK(bench.troubles().size() >= 1);
                }
}

TEST_CASE("on a disk that fails every other call, everything is still saved") {
    Bench bench;
    bench.disk->fate = [](Call call, int number) {
        if (call == Call::open) return number % 2 ? Fate::fails : Fate::good;
        return number % 3 == 0 ? Fate::good : call == Call::write ? Fate::half : Fate::fails;
    };
    const auto journal = bench.open();
    const auto recorded = recordPortions(*journal);
    CHECK(onceById(bench.afterPowerCut().facts) == recorded);
    CHECK_FALSE(bench.sentTooEarly());
}

TEST_CASE("when all goes well the file is opened once, and what is reported has been synced") {
    Bench bench;
    const auto journal = bench.open();
    const auto recorded = recordPortions(*journal);
    const auto calls = bench.disk->calls();
    CHECK(std::count(calls.begin(), calls.end(), Call::open) == 1);
    CHECK(calls.front() == Call::open);
    CHECK(calls.back() == Call::sync);
    CHECK(std::count(calls.begin(), calls.end(), Call::write) ==
          std::count(calls.begin(), calls.end(), Call::sync));
    std::vector<Id> ids;
    for (const auto& fact : recorded) ids.push_back(fact.id);
    CHECK(bench.saved() == ids);
    CHECK(bench.troubles().empty());
    CHECK(bench.afterPowerCut().facts == recorded);
    CHECK(bench.afterPowerCut().faults.empty());
}

TEST_CASE(
    "the window never waits: record() returns while the disk does not, and what waits goes in one sync") {
    Bench bench;
    bench.disk->holdSync();
    const auto journal = bench.open();
    journal->record(aRun());
    bench.disk->waitUntilHeld();
    for (int i = 0; i < 500; ++i) journal->record(aRun()); // the disk hangs in a sync meanwhile
    CHECK(journal->unsaved() == 501);
    CHECK_FALSE(journal->flush(0));
    CHECK(bench.saved().empty());
    bench.disk->releaseSync();
    CHECK(journal->flush(longEnough));
    CHECK(journal->unsaved() == 0);
    CHECK(bench.saved().size() == 501);
    const auto calls = bench.disk->calls();
    CHECK(std::count(calls.begin(), calls.end(), Call::sync) == 2);
}

TEST_CASE("trouble is reported once until it ends, and again when it comes back") {
    Bench bench;
    bench.disk->fate = [](Call call, int number) {
        return call == Call::write && (number <= 4 || number == 6) ? Fate::fails : Fate::good;
    };
    bench.disk->error = ENOSPC;
    const auto journal = bench.open();
    const Fault full{FaultNumber::diskFull, {bench.path(), 0}, {"No space left on device"}};
    journal->record(aRun());
    CHECK(journal->flush(longEnough));
    CHECK(bench.troubles() == std::vector<Fault>{full});
    journal->record(aRun());
    CHECK(journal->flush(longEnough));
    CHECK(bench.troubles() == std::vector<Fault>{full, full});
}

TEST_CASE(
    "a fault other than a full disk is reported with the system's message; a short write means a full disk") {
    for (const bool half : {false, true}) {
        Bench bench;
        bench.disk->fate = [half](Call call, int number) {
            return call == Call::write && number == 1 ? (half ? Fate::half : Fate::fails) : Fate::good;
        };
        const auto journal = bench.open();
        journal->record(aRun());
        CHECK(journal->flush(longEnough));
        const auto troubles = bench.troubles();
        REQUIRE(troubles.size() == 1);
        CHECK(troubles[0] ==
              (half ? Fault{FaultNumber::diskFull, {bench.path(), 0}, {"No space left on device"}}
                    : Fault{FaultNumber::cannotWrite, {bench.path(), 0}, {"Input/output error"}}));
    }
}

TEST_CASE("closing a journal saves what still waits, also through a failure") {
    Bench bench;
    bench.disk->fate = [](Call, int number) { return number == 1 ? Fate::fails : Fate::good; };
    {
        const auto journal = bench.open();
        for (int i = 0; i < 20; ++i) journal->record(aRun());
    }
    CHECK(onceById(bench.afterPowerCut().facts).size() == 20);
    CHECK(bench.saved().size() == 20);
}

TEST_CASE("closing gives up on a disk that keeps failing") {
    Bench bench(5);
    bench.disk->fate = [](Call, int) { return Fate::fails; };
    {
        const auto journal = bench.open();
        journal->record(aRun());
        bench.waitForTrouble();
    }
    CHECK(bench.saved().empty());
    CHECK(bench.troubles().size() == 1);
}

TEST_CASE("closing does not wait for a disk that hangs; the lock stays until the hanging write is over") {
    Bench bench(5);
    bench.disk->holdSync();
    {
        const auto journal = bench.open();
        journal->record(aRun());
        bench.disk->waitUntilHeld();
    }
    CHECK(bench.open()->readOnly());
    bench.disk->releaseSync();
    while (bench.disk.use_count() > 1) std::this_thread::yield();
    CHECK(bench.saved().empty()); // nobody is listening any more
    CHECK(onceById(bench.afterPowerCut().facts).size() == 1);
    CHECK_FALSE(bench.open()->readOnly());
}

TEST_CASE(
    "a sync that keeps failing does not stop later writes or make the file grow, and is not reported as a "
    "full disk") {
    Bench bench(5);
    bench.disk->fate = [](Call call, int) { return call == Call::sync ? Fate::fails : Fate::good; };
    std::size_t writes = 0;
    {
        const auto journal = bench.open();
        for (int i = 0; i < 25; ++i) {
            journal->record(aRun());
            bench.waitForWrites(static_cast<std::size_t>(i) + 4); // the first one four times
        }
        CHECK(journal->unsaved() == 25);
        writes = bench.writes();
        std::this_thread::sleep_for(std::chrono::milliseconds(30)); // many retries
        CHECK(bench.writes() == writes);
    }
    CHECK(writes == 24 + 4);
    CHECK(bench.saved().empty());
    const auto troubles = bench.troubles();
    REQUIRE(troubles.size() == 2);
    CHECK(troubles[1] == Fault{FaultNumber::notConfirmed, {bench.path(), 0}, {}});
}

TEST_CASE("once a sync works again, all that was not confirmed is written again and saved, in order") {
    Bench bench;
    std::atomic<bool> works{false};
    bench.disk->fate = [&works](Call call, int) {
        return call == Call::sync && !works ? Fate::fails : Fate::good;
    };
    const auto journal = bench.open();
    std::vector<Fact> recorded;
    for (int i = 0; i < 25; ++i) {
        recorded.push_back(journal->record(aRun()));
        bench.waitForWrites(static_cast<std::size_t>(i) + 4); // the first one four times
    }
    works = true;
    CHECK(journal->flush(longEnough));
    CHECK(onceById(bench.afterPowerCut().facts) == recorded);
    CHECK_FALSE(bench.sentTooEarly());
    std::vector<Id> ids;
    for (const auto& fact : recorded) ids.push_back(fact.id);
    CHECK(bench.saved() == ids);
    recorded.push_back(journal->record(aRun()));
    CHECK(journal->flush(longEnough));
    CHECK(bench.saved().size() == 26);
}

TEST_CASE("facts of two years in one go reach both files") {
    Bench bench;
    bench.disk->holdSync();
    const auto journal = bench.open();
    journal->record(aRun());
    bench.disk->waitUntilHeld();
    bench.setTime("2026-12-31T23:59:00+01:00");
    journal->record(aRun());
    bench.setTime("2027-01-01T00:01:00+01:00");
    journal->record(aRun());
    bench.disk->releaseSync();
    CHECK(journal->flush(longEnough));
    const std::string older = bench.disk->durable(bench.path("2026"));
    const std::string newer = bench.disk->durable(bench.path("2027"));
    CHECK(std::count(older.begin(), older.end(), '\n') == 2);
    CHECK(std::count(newer.begin(), newer.end(), '\n') == 1);
}

TEST_CASE("a torn line is closed before anything else is written, however often that fails") {
    Bench bench;
    bench.disk->fate = [](Call call, int number) {
        return call == Call::sync && number <= 2 ? Fate::fails : Fate::good;
    };
    put(bench.path(), "{\"torn");
    const auto journal = bench.open();
    const Fact fact = journal->record(aRun());
    CHECK(journal->flush(longEnough));
    const std::string written = bench.disk->durable(bench.path());
    CHECK(written.starts_with("\n"));
    CHECK(bench.afterPowerCut().facts == std::vector<Fact>{fact});
    CHECK(bench.afterPowerCut().faults.empty());
}

TEST_CASE("a fact too long for its line is written and reported, because it cannot be read back") {
    Bench bench;
    const auto journal = bench.open();
    journal->record(PassageFact{{0, 1}, Title{std::string(70'000, 'x'), {}}, {}, {}});
    CHECK(journal->flush(longEnough));
    CHECK(bench.troubles() == std::vector<Fault>{{FaultNumber::lineTooLong, {bench.path(), 0}, {}}});
    CHECK(bench.saved().size() == 1);
}
