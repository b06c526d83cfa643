// SPDX-License-Identifier: GPL-3.0-or-later
// An open practice book in a folder of its own, with a clock that only the test moves.
#pragma once

#include "../files/kept_files.h"
#include "practice/log/practice_book.h"

#include <doctest/doctest.h>

#include <QTemporaryDir>

#include <memory>
#include <string>

namespace piolo::test {

class StillClock final : public journal::Clock {
public:
    Timestamp now() override { return {millis, 0}; }
    void nextDay() { millis += 86'400'000; }
    std::int64_t millis = 1'772'352'000'000; // 2026-03-01T08:00:00Z
};

class BookFixture {
public:
    BookFixture() {
        REQUIRE(scratch.isValid());
        book = anotherBook();
    }
    /// Opens the same folder once more.
    [[nodiscard]] std::unique_ptr<practice::PracticeBook>
    anotherBook(journal::JournalPorts ports = {}) const {
        ports.clock = clock;
        auto opened = practice::PracticeBook::open({path("folder"), device, path("state")}, std::move(ports));
        REQUIRE(opened);
        return std::move(opened).value();
    }
    [[nodiscard]] std::string path(const char* name) const { return scratch.filePath(name).toStdString(); }

    Id addPiece(const std::string& name, std::optional<Date> due = {}) {
        const Id id = book->newId();
        book->record(PieceFact{id, name, "Clarinet in B♭", std::optional<std::optional<Date>>(due)});
        return id;
    }
    /// Four bars of 4/4 from 60 to 96.
    Id addPassage(const std::string& name, Id piece = {}, int firstBar = 1) {
        Passage passage;
        passage.music.firstBar = firstBar;
        passage.tempi.rule.target = Tempo::bpm(96);
        const Id id = book->newId();
        book->record(PassageFact{id, Title{name, piece}, passage.music, passage.tempi});
        return id;
    }
    void run(Id passage, int bpm, Mark mark = Mark::clean) {
        book->record(RunFact{passage, Tempo::bpm(bpm), mark, Reason::none, RunKind::run, 8'000, {}});
    }
    [[nodiscard]] static QString text(Id id) { return QString::fromStdString(id.text()); }

    static constexpr const char* device = "0123456789abcdef0123456789abcdef";
    QTemporaryDir scratch;
    KeptFiles kept{scratch.path().toStdString()};
    std::shared_ptr<StillClock> clock = std::make_shared<StillClock>();
    std::unique_ptr<practice::PracticeBook> book;
};

} // namespace piolo::test
