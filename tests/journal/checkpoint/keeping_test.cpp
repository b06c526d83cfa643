// SPDX-License-Identifier: GPL-3.0-or-later
// When a journal writes its checkpoint; nothing depends on it.
#include "../fakes.h"
#include "journal/checkpoint/checkpoint.h"
#include "journal/folder/journal.h"
#include "journal/lines/fact_line.h"
#include "random_folder.h"
#include "same_notebook.h"

#include <chrono>
#include <doctest/doctest.h>
#include <sys/stat.h>
#include <thread>

using namespace piolo;
using namespace piolo::journal;
using namespace piolo::test;

namespace {

struct JournalFixture {
    [[nodiscard]] std::unique_ptr<Journal> open(const std::string& cacheDir) const {
        JournalPorts ports;
        ports.clock = std::make_shared<SetClock>(Timestamp{readAt, 0});
        auto opened =
            Journal::open({folder.path(), testDevice, state.path(), cacheDir}, {}, std::move(ports));
        REQUIRE(opened.ok());
        return std::move(opened).value();
    }
    [[nodiscard]] std::unique_ptr<Journal> open() const { return open(cache / "piolo"); }
    [[nodiscard]] std::string file() const {
        return checkpointFile(folder.path(), testDevice, cache / "piolo");
    }
    void write(std::size_t runs) const {
        std::string lines;
        for (std::size_t i = 1; i <= runs; ++i) {
            RunFact run;
            run.passage = {0, 1};
            const auto order = static_cast<std::int64_t>(i);
            lines += toLine({{9, i}, testDevice, i, order, {order, 0}, run}) + "\n";
        }
        put(folder / ("journal/" + testDevice + "-1970.jsonl"), lines);
    }
    [[nodiscard]] bool appears() const {
        for (int tenths = 0; tenths < 600 && !std::filesystem::exists(file()); ++tenths)
            std::this_thread::sleep_for(std::chrono::milliseconds(100));
        return std::filesystem::exists(file());
    }

    ScratchFolder folder;
    ScratchFolder state;
    ScratchFolder cache;
};

RunFact aRun() {
    RunFact run;
    run.passage = {0, 1};
    return run;
}

} // namespace

TEST_CASE("a long journal writes its checkpoint in the cache, and the next one opens from it and goes on as "
          "usual") {
    const JournalFixture places;
    places.write(worthACheckpoint);
    const std::string before = contentOf(places.folder / ("journal/" + testDevice + "-1970.jsonl"));
    {
        const auto journal = places.open();
        CHECK(journal->contents().facts.size() == worthACheckpoint);
        journal->keepCheckpoint();
        CHECK(places.appears());
    }
    CHECK(places.folder.names() == std::vector<std::string>{"journal"});
    CHECK(contentOf(places.folder / ("journal/" + testDevice + "-1970.jsonl")) == before);
    const auto journal = places.open();
    REQUIRE(journal->contents().stored != nullptr);
    CHECK(journal->contents().stored->factCount() == worthACheckpoint);
    CHECK(journal->contents().facts.empty());
    const Fact next = journal->record(aRun());
    CHECK(next.seq == worthACheckpoint + 1);
    CHECK(next.order == readAt);
    CHECK(journal->flush(60'000));
    CHECK(sameNotebook(notebookOf(*readFolder(places.folder.path(), testDevice)), [&] {
        Notebook notebook(journal->contents().stored);
        notebook.add(next);
        return notebook;
    }()));
}

TEST_CASE("a checkpoint that lacks few facts, and one of a short journal, are not worth writing") {
    const JournalFixture places;
    places.write(worthACheckpoint - 1);
    places.open()->keepCheckpoint();
    CHECK(places.cache.names().empty());
    REQUIRE(writeCheckpoint(places.file(), places.folder.path(), testDevice));
    const std::string first = contentOf(places.file());
    const auto journal = places.open();
    journal->record(aRun());
    journal->keepCheckpoint();
    CHECK(journal->flush(60'000));
    CHECK(contentOf(places.file()) == first);
}

TEST_CASE("a cache that cannot be written, a journal closed at once, and one without a cache cost nothing") {
    const JournalFixture places;
    places.write(worthACheckpoint);
    put(places.cache / "file", "not a folder");
    for (const auto& cacheDir : {places.cache / "file", places.cache / "file/below", std::string()}) {
        const auto journal = places.open(cacheDir);
        journal->keepCheckpoint();
        journal->record(aRun());
        CHECK(journal->flush(60'000));
    }
    CHECK(readFolder(places.folder.path(), testDevice)->facts.size() == worthACheckpoint + 3);
    CHECK(contentOf(places.cache / "file") == "not a folder");
}

TEST_CASE("a journal that only reads writes no checkpoint") {
    const JournalFixture places;
    places.write(worthACheckpoint);
    const auto writer = places.open();
    const auto reader = places.open();
    REQUIRE(reader->readOnly());
    reader->keepCheckpoint();
    CHECK(places.cache.names().empty());
}
