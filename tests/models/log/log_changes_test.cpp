// SPDX-License-Identifier: GPL-3.0-or-later
// Marks changed in the log, what was taken back put back, and what the log leaves out.
#include "models/log/log_model.h"

#include "../../practice/book_fixture.h"

#include <QSet>

using namespace piolo;
using models::LogModel;
using test::BookFixture;

namespace {

struct ChangesFixture : BookFixture {
    ChangesFixture() { log.setShown(true); }

    LogModel log{*book};
    Id coda = addPassage("coda");

    void play(int bpm, Mark mark = Mark::clean, Reason reason = Reason::none) {
        clock->millis += 20'000;
        std::vector<Spot> spots;
        if (mark == Mark::missed) spots.push_back({2, 3});
        book->record(RunFact{coda, Tempo::bpm(bpm), mark, reason, RunKind::run, 8'000, spots});
    }
    void set(int bpm, Reason reason = Reason::hand, Id passage = {}) {
        clock->millis += 20'000;
        book->record(TempoFact{passage.isNone() ? coda : passage, Tempo::bpm(bpm), reason});
    }
    [[nodiscard]] QVariantList lines() const { return log.data(log.index(0), LogModel::Lines).toList(); }
    /// "tempo marks effect" for a line of the newest day.
    [[nodiscard]] std::string line(int line) const {
        const QVariantMap map = lines().value(line).toMap();
        return QStringList{map["tempo"].toString(), map["marks"].toString(), map["effect"].toString()}
            .join(" | ")
            .toStdString();
    }
    [[nodiscard]] QVariantMap entry(int line, int index) const {
        return log.entriesOf(0, line).value(index).toMap();
    }
    [[nodiscard]] QString id(int line, int index) const { return entry(line, index)["entry"].toString(); }
    [[nodiscard]] QString passage() const { return BookFixture::text(coda); }
};

} // namespace

TEST_CASE_FIXTURE(ChangesFixture,
                  "a miss that was clean is changed, named as changed, and can be changed back") {
    for (int i = 0; i < 4; ++i) play(60);
    play(60, Mark::missed);
    CHECK(line(0) == "60 | ●●●●▼ | drops to 56 · bar 2, beat 3");
    CHECK(entry(0, 4)["canBeClean"].toBool());
    CHECK_FALSE(entry(0, 4)["canBeMissed"].toBool());
    const QString run = id(0, 4);
    log.setClean(passage(), run, true);
    CHECK(line(0) == "60 | ●●●●● | climbs to 62");
    CHECK(entry(0, 4)["mark"].toString() == "clean, changed afterwards");
    CHECK_FALSE(entry(0, 4)["canBeClean"].toBool());
    CHECK(log.lineOf(0, run) == 0);
    const auto facts = book->notebook().factCount();
    log.setClean(passage(), run, true);
    log.setClean(passage(), "none such", true);
    CHECK(book->notebook().factCount() == facts);
    log.setClean(passage(), run, false);
    CHECK(line(0) == "60 | ●●●●▼ | drops to 56 · bar 2, beat 3");
    CHECK(entry(0, 4)["mark"].toString() == "missed");
}

TEST_CASE_FIXTURE(ChangesFixture, "a run that does not count can be made either; a tempo cannot be marked") {
    play(60, Mark::voided, Reason::stopped);
    set(70);
    CHECK(entry(0, 0)["canBeClean"].toBool());
    CHECK(entry(0, 0)["canBeMissed"].toBool());
    CHECK_FALSE(entry(1, 0)["canBeClean"].toBool());
    CHECK_FALSE(entry(1, 0)["canBeMissed"].toBool());
    log.setClean(passage(), id(1, 0), true);
    CHECK(line(1) == "70 |  | set by hand");
    log.setClean(passage(), id(0, 0), false);
    CHECK(line(0) == "60 | ▼ | drops to 56");
}

TEST_CASE_FIXTURE(ChangesFixture,
                  "what was taken back is named, and put back one after the other in its place") {
    play(60);
    play(60, Mark::missed);
    const std::string before = line(0);
    const QString first = id(0, 0);
    log.takeBack(passage(), id(0, 1));
    CHECK(log.takenBack() == "Taken back: miss at 60, bar 2, beat 3");
    log.takeBack(passage(), first);
    CHECK(log.takenBack() == "Taken back: clean run at 60");
    CHECK(log.count() == 0);
    log.putBack();
    CHECK(log.takenBack() == "Taken back: miss at 60, bar 2, beat 3");
    log.putBack();
    CHECK(log.takenBack() == "");
    CHECK(line(0) == before);
    log.putBack();
    log.takeBack(passage(), first);
    log.setShown(false);
    CHECK(log.takenBack() == "");
}

TEST_CASE_FIXTURE(ChangesFixture, "a run-through is put back, too") {
    const Id suite = addPiece("River Suite");
    book->record(RunThroughFact{suite, {}, 360'000, true, {}});
    log.takeBack(entry(0, 0)["passage"].toString(), id(0, 0));
    CHECK(log.count() == 0);
    CHECK(log.takenBack() == "Taken back: run-through");
    log.putBack();
    CHECK(log.count() == 1);
}

TEST_CASE_FIXTURE(ChangesFixture, "each entry names its run, and no two share a name") {
    for (int i = 0; i < 5; ++i) {
        play(60);
        clock->millis -= 20'000; // within the same minute
    }
    QSet<QString> names;
    for (int i = 0; i < 5; ++i) names.insert(entry(0, i)["spoken"].toString());
    CHECK(names.size() == 5);
    CHECK(entry(0, 1)["spoken"].toString() == "run 2 of 5 at 08:00, clean");
}

TEST_CASE_FIXTURE(ChangesFixture, "a day says once that it opened, and where the passage was left") {
    const Id trio = addPassage("trio");
    play(60);
    clock->nextDay();
    set(58, Reason::newDay);
    play(58);
    set(70, Reason::newDay, trio);
    REQUIRE(lines().size() == 2);
    CHECK(line(0) == "58 |  | new day; left at 60");
    log.setKind("tempo");
    CHECK(lines().size() == 2); // asked for, all of them
}

TEST_CASE_FIXTURE(ChangesFixture, "of tempi set one after the other, the log shows the last") {
    set(62);
    set(64);
    set(66);
    play(66);
    set(70);
    REQUIRE(lines().size() == 3);
    CHECK(line(0) == "66 |  | set by hand");
    CHECK(line(2) == "70 |  | set by hand");
}

TEST_CASE_FIXTURE(ChangesFixture, "runs that do not count are not called not played") {
    log.setPassage(passage());
    CHECK(log.figures()->breaks()["note"].toString() == "Not played yet.");
    play(60, Mark::voided, Reason::tempoChanged);
    CHECK(log.figures()->breaks()["note"].toString() == "No run has counted so far.");
    play(60);
    CHECK(log.figures()->breaks()["note"].toString() == "No misses so far.");
}

TEST_CASE_FIXTURE(ChangesFixture, "two weeks are a line, and a week without practice is left out") {
    CHECK(log.figures()->weekText() == "");
    for (int i = 0; i < 4; ++i) play(60);
    for (int i = 0; i < 7; ++i) clock->nextDay();
    play(60, Mark::missed);
    const QString text = log.figures()->weekText();
    CHECK(text == "This week: 8 s, 1 run, 0% clean  ·  Last week: 32 s, 4 runs, 100% clean");
    for (int i = 0; i < 7; ++i) clock->nextDay();
    log.setShown(false);
    log.setShown(true);
    CHECK(log.figures()->weekText() == "Last week: 8 s, 1 run, 0% clean");
}

TEST_CASE_FIXTURE(ChangesFixture, "the worst passages are named with why") {
    for (int i = 0; i < 3; ++i) play(60);
    for (int i = 0; i < 3; ++i) play(60, Mark::missed);
    const QVariantList worst = log.figures()->worst();
    REQUIRE(worst.size() == 1);
    CHECK(worst[0].toMap()["passage"].toString() == passage());
    CHECK(worst[0].toMap()["title"].toString() == "coda");
    CHECK(worst[0].toMap()["why"].toString() == "3 of 6 clean, most misses in bar 2");
}
