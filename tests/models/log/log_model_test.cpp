// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_model.h"

#include "../../practice/book_fixture.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

using namespace piolo;
using models::LogModel;
using test::BookFixture;

namespace {

struct LogFixture : BookFixture {
    LogFixture() { log.setShown(true); }

    LogModel log{*book};
    QAbstractItemModelTester tester{&log, QAbstractItemModelTester::FailureReportingMode::Fatal};

    [[nodiscard]] std::string text(int day, LogModel::Role role) const {
        return log.data(log.index(day), role).toString().toStdString();
    }
    [[nodiscard]] QVariantList lines(int day) const {
        return log.data(log.index(day), LogModel::Lines).toList();
    }
    /// "title tempo marks effect" for a line.
    [[nodiscard]] std::string line(int day, int line) const {
        const QVariantMap map = lines(day).value(line).toMap();
        return QStringList{map["title"].toString(), map["tempo"].toString(), map["marks"].toString(),
                           map["effect"].toString()}
            .join(" | ")
            .toStdString();
    }
    /// A run with a miss marked at that place.
    void miss(Id passage, int bpm, Spot spot) {
        step();
        book->record(
            RunFact{passage, Tempo::bpm(bpm), Mark::missed, Reason::none, RunKind::run, 8'000, {spot}});
    }
    void clean(Id passage, int bpm, int times = 1) {
        for (int run = 0; run < times; ++run) {
            step();
            BookFixture::run(passage, bpm);
        }
    }
    void apart(Id passage, int bpm, RunKind kind) {
        step();
        book->record(RunFact{passage, Tempo::bpm(bpm), Mark::clean, Reason::none, kind, 8'000, {}});
    }
    void step() { clock->millis += 20'000; }
};

} // namespace

TEST_CASE_FIXTURE(LogFixture, "a log with nothing in it says so, whatever the filter") {
    CHECK(log.count() == 0);
    CHECK(log.nothingYet());
    log.setKind("try");
    CHECK(log.nothingYet());
    addPassage("coda");
    CHECK(log.nothingYet());
    CHECK(log.entriesOf(0, 0).isEmpty());
    log.takeBack("none", "such");
    CHECK(log.count() == 0);
}

TEST_CASE_FIXTURE(LogFixture, "days stand newest first, each with its minutes and its share of clean runs") {
    const Id id = addPassage("coda");
    clean(id, 60, 2);
    clock->nextDay();
    clean(id, 60, 14);
    miss(id, 62, {2, 3});
    REQUIRE(log.count() == 2);
    CHECK(text(0, LogModel::DayTitle) == "Monday, 2 March");
    CHECK(text(0, LogModel::Figures) == "2 min · 14 of 15 clean");
    CHECK(text(1, LogModel::DayTitle) == "Sunday, 1 March");
    CHECK(text(1, LogModel::Figures) == "16 s · 2 of 2 clean");
}

TEST_CASE_FIXTURE(LogFixture, "runs of one passage at one tempo are one line, until the tempo moves") {
    const Id id = addPassage("coda");
    clean(id, 60, 5);
    clean(id, 62, 2);
    miss(id, 62, {2, 3});
    clean(id, 58, 1);
    REQUIRE(lines(0).size() == 3);
    CHECK(line(0, 0) == "coda | 60 | ●●●●● | climbs to 62");
    CHECK(line(0, 1) == "coda | 62 | ●●▼ | drops to 58 · bar 2, beat 3");
    CHECK(line(0, 2) == "coda | 58 | ● | one clean in a row");
}

TEST_CASE_FIXTURE(LogFixture, "another passage, another kind and a tempo set end a line") {
    const Id coda = addPassage("coda");
    const Id trio = addPassage("trio");
    clean(coda, 60);
    clean(trio, 60);
    clean(coda, 60);
    apart(coda, 96, RunKind::attempt);
    step();
    book->record(TempoFact{coda, Tempo::bpm(70), Reason::hand});
    REQUIRE(lines(0).size() == 5);
    CHECK(line(0, 1) == "trio | 60 | ● | one clean in a row");
    CHECK(line(0, 3) == "coda | 96 | ● | a try: changes nothing");
    CHECK(line(0, 4) == "coda | 70 |  | set by hand");
}

TEST_CASE_FIXTURE(LogFixture, "another articulation or rhythm is a line of its own, and is named") {
    const Id id = addPassage("coda");
    clean(id, 60, 2);
    PassageFact slurred;
    slurred.passage = id;
    slurred.manner = Manner{Articulation::slurred, Rhythm::groups, 3, ""};
    book->record(slurred);
    clean(id, 60, 2);
    REQUIRE(lines(0).size() == 2);
    CHECK(line(0, 0).ends_with("two clean in a row"));
    CHECK(line(0, 1).ends_with("two clean in a row · all slurred · in groups"));
}

TEST_CASE_FIXTURE(LogFixture, "a run at the floor stays there, and a full streak at the target is secure") {
    const Id id = addPassage("coda");
    miss(id, 40, {1, 1});
    CHECK(line(0, 0) == "coda | 40 | ▼ | stays at 40 · bar 1, beat 1");
    clean(id, 96, 5);
    CHECK(line(0, 1) == "coda | 96 | ●●●●● | secure");
}

TEST_CASE_FIXTURE(LogFixture, "too many marks for a glance are counted") {
    const Id id = addPassage("coda");
    for (int run = 0; run < 12; ++run) apart(id, 48, RunKind::aside);
    REQUIRE(lines(0).size() == 1);
    CHECK(line(0, 0) == "coda | 48 | 12 ● | aside: changes nothing");
    CHECK(lines(0)[0].toMap()["spoken"].toString().contains("12 clean"));
    CHECK(log.entriesOf(0, 0).size() == 12);
}

TEST_CASE_FIXTURE(LogFixture, "of a day and of a line, a hundred are made at a time") {
    const Id id = addPassage("coda");
    for (int run = 0; run < 250; ++run) apart(id, 48, RunKind::aside);
    CHECK(log.entriesOf(0, 0).size() == 100);
    CHECK(log.entriesOf(0, 0, 200).size() == 200);
    CHECK(log.entriesOf(0, 0, 300).size() == 250);
    CHECK(log.entryCount(0, 0) == 250);
    for (int run = 0; run < 150; ++run) apart(id, 50 + run % 2, RunKind::aside);
    CHECK(lines(0).size() == 100);
    CHECK(log.data(log.index(0), LogModel::LineCount).toInt() == 151);
    CHECK(log.linesOf(0, 1000).size() == 151);
    CHECK(log.linesOf(0, 100) == lines(0));
}

TEST_CASE_FIXTURE(LogFixture, "the log is narrowed by piece, passage, kind and time") {
    const Id suite = addPiece("River Suite");
    const Id coda = addPassage("coda", suite);
    const Id scale = addPassage("scale");
    clean(scale, 60);
    clock->millis += 40 * 86'400'000LL;
    clean(coda, 60);
    apart(coda, 96, RunKind::attempt);
    CHECK(log.count() == 2);
    log.setPiece(BookFixture::text(suite));
    CHECK(log.count() == 1);
    CHECK(log.passages().size() == 2); // every passage, coda
    log.setKind("try");
    REQUIRE(log.count() == 1);
    CHECK(lines(0).size() == 1);
    CHECK(text(0, LogModel::Figures) == "8 s · 1 of 1 clean");
    log.setKind("silent");
    CHECK(log.count() == 0);
    CHECK(!log.nothingYet());
    log.setKind("");
    log.setPiece("");
    log.setSince("4w");
    CHECK(log.count() == 1);
    log.setSince("");
    log.setPassage(BookFixture::text(scale));
    CHECK(log.count() == 1);
    log.setPiece(BookFixture::text(suite));
    CHECK(log.passage() == "");
}

TEST_CASE_FIXTURE(LogFixture,
                  "an entry that is taken back is gone, and what followed counts as if it had never been") {
    const Id id = addPassage("coda");
    clean(id, 60, 4);
    miss(id, 60, {2, 3});
    clean(id, 60, 1);
    const QVariantList runs = log.entriesOf(0, 0);
    REQUIRE(runs.size() == 5);
    const auto facts = book->notebook().factCount();
    log.takeBack(BookFixture::text(id), runs[4].toMap()["entry"].toString());
    CHECK(book->notebook().factCount() == facts + 1); // one more fact, none removed
    REQUIRE(lines(0).size() == 1);
    CHECK(line(0, 0) == "coda | 60 | ●●●●● | climbs to 62");
    log.takeBack(BookFixture::text(id), runs[4].toMap()["entry"].toString());
    CHECK(book->notebook().factCount() == facts + 1);
}

TEST_CASE_FIXTURE(
    LogFixture, "a run of today changes rows and moves none; the last entry of a day takes the day with it") {
    const Id id = addPassage("coda");
    clean(id, 60);
    clock->nextDay();
    clean(id, 60);
    QSignalSpy resets(&log, &QAbstractItemModel::modelReset);
    QSignalSpy changes(&log, &QAbstractItemModel::dataChanged);
    clean(id, 60);
    CHECK(resets.isEmpty());
    CHECK(changes.size() == 1);
    log.takeBack(BookFixture::text(id), log.entriesOf(1, 0)[0].toMap()["entry"].toString());
    CHECK(log.count() == 1);
}

TEST_CASE_FIXTURE(LogFixture, "while it is not shown nothing is read, and all of it when it is shown again") {
    const Id id = addPassage("coda");
    log.setShown(false);
    clean(id, 60);
    CHECK(log.count() == 0);
    log.setShown(true);
    CHECK(log.count() == 1);
}

TEST_CASE_FIXTURE(LogFixture, "runs of a removed passage stay in the log") {
    const Id id = addPassage("coda");
    clean(id, 60);
    book->record(RemovalFact{id, true});
    REQUIRE(log.count() == 1);
    CHECK(line(0, 0) == "coda (removed) | 60 | ● | one clean in a row");
    CHECK(log.passages().size() == 1); // no longer offered
}

TEST_CASE_FIXTURE(LogFixture, "a note stands beside its run, is changed, and taken away by empty words") {
    const Id id = addPassage("coda");
    clean(id, 60);
    const QString passage = BookFixture::text(id);
    const QString entry = log.entriesOf(0, 0)[0].toMap()["entry"].toString();
    log.setNote(passage, entry, "  alternate\nfingering ");
    CHECK(lines(0)[0].toMap()["note"].toString() == "alternate fingering");
    CHECK(lines(0)[0].toMap()["spoken"].toString().endsWith("alternate fingering"));
    CHECK(log.entriesOf(0, 0)[0].toMap()["note"].toString() == "alternate fingering");
    const auto facts = book->notebook().factCount();
    log.setNote(passage, entry, "alternate fingering");
    log.setNote(passage, "none such", "words");
    CHECK(book->notebook().factCount() == facts);             // nothing new was recorded
    log.setNote(passage, entry, QString(300, QChar(0x266d))); // three bytes each
    CHECK(lines(0)[0].toMap()["note"].toString() == QString(NoteFact::longest / 3, QChar(0x266d)));
    log.setNote(passage, entry, "");
    CHECK(lines(0)[0].toMap()["note"].toString() == "");
}

TEST_CASE_FIXTURE(LogFixture, "a run-through is a line of its piece, with its stops, and can be taken back") {
    const Id suite = addPiece("River Suite");
    const Id coda = addPassage("coda", suite);
    clean(coda, 60);
    step();
    book->record(RunThroughFact{suite, Tempo::bpm(132), 372'000, true, {{31, 60'000}, {58, 200'000}}});
    step();
    book->record(RunThroughFact{suite, {}, 360'000, true, {}});
    clean(coda, 60);
    REQUIRE(lines(0).size() == 4);
    CHECK(line(0, 1) == "River Suite, run-through | 132 | 2 stops | 6 min 12 s · bars 31, 58");
    CHECK(line(0, 2) == "River Suite, run-through |  | no stop | 6 min");
    CHECK(text(0, LogModel::Figures) == "12 min · 2 of 2 clean");
    log.setKind("runThrough");
    REQUIRE(lines(0).size() == 2);
    CHECK(log.kind() == "runThrough");
    const QVariantMap through = log.entriesOf(0, 1)[0].toMap();
    log.takeBack(through["passage"].toString(), through["entry"].toString());
    CHECK(lines(0).size() == 1);
    log.setKind("");
    log.setPassage(BookFixture::text(coda));
    CHECK(lines(0).size() == 1);
}
