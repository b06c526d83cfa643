// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_figures.h"

#include "../../practice/book_fixture.h"
#include "models/log/log_misses.h"

using namespace piolo;
using models::LogFigures;
using test::BookFixture;

namespace {

struct FiguresFixture : BookFixture {
    LogFigures figures{*book};

    void read(Id passage = {}) { figures.read({{}, passage, {}, false, {}}); }
    void miss(Id passage, Spot spot) {
        clock->millis += 20'000;
        book->record(
            RunFact{passage, Tempo::bpm(60), Mark::missed, Reason::none, RunKind::run, 8'000, {spot}});
    }
    void practise(Id passage, int minutes, RunKind kind = RunKind::run) {
        book->record(RunFact{passage, Tempo::bpm(60), Mark::clean, Reason::none, kind, minutes * 60'000, {}});
    }
    [[nodiscard]] QVariantMap day(int ago) const {
        return figures.days()[static_cast<qsizetype>(27 - ago)].toMap();
    }
    /// A passage of twelve bars that breaks in bar 7.
    Id broken() {
        Passage passage;
        passage.music.bars = 12;
        const Id id = book->newId();
        book->record(PassageFact{id, Title{"trio", {}}, passage.music, passage.tempi});
        for (int run = 0; run < 5; ++run) miss(id, {7, 3});
        miss(id, {2, 2});
        return id;
    }
};

} // namespace

TEST_CASE_FIXTURE(FiguresFixture, "nothing played: no sentence on missed days, no bars, nothing to make") {
    read();
    CHECK(figures.gapText() == "");
    CHECK(figures.days().size() == 28);
    CHECK(figures.mostMinutes() == 0);
    CHECK(figures.breaks().isEmpty());
    CHECK(figures.stretchText() == "");
    CHECK(figures.buildUpText() == "");
    figures.makeStretch();
    figures.buildUp();
    CHECK(book->notebook().factCount() == 0);
}

TEST_CASE_FIXTURE(FiguresFixture, "a day's minutes stand by kind, in shares of the longest day") {
    const Id id = addPassage("coda");
    practise(id, 20);
    clock->nextDay();
    practise(id, 5);
    practise(id, 5, RunKind::silent);
    read();
    CHECK(figures.mostMinutes() == 20);
    CHECK(day(1)["runs"].toDouble() == doctest::Approx(1.0));
    CHECK(day(0)["runs"].toDouble() == doctest::Approx(0.25));
    CHECK(day(0)["apart"].toDouble() == doctest::Approx(0.25));
    CHECK(day(0)["throughs"].toDouble() == doctest::Approx(0.0));
    CHECK(day(1)["spoken"].toString() == "Sunday, 1 March: 20 min, 1 of 1 clean");
    CHECK(day(2)["spoken"].toString() == "Saturday, 28 February: no practice");
}

TEST_CASE_FIXTURE(FiguresFixture,
                  "one missed day is fine; two in a row are pointed out, and put right by today") {
    const Id id = addPassage("coda");
    practise(id, 10);
    clock->nextDay();
    clock->nextDay();
    practise(id, 10);
    read();
    CHECK(figures.gapText().contains("No two days missed in a row"));
    CHECK(day(1)["missed"].toBool());
    CHECK(!day(1)["longGap"].toBool());
    for (int days = 0; days < 3; ++days) clock->nextDay();
    read();
    CHECK(figures.gapText().contains("not practised for two days"));
    CHECK(day(1)["longGap"].toBool());
    CHECK(day(2)["longGap"].toBool());
    CHECK(!day(0)["missed"].toBool()); // today is not over yet
    practise(id, 1);
    read();
    CHECK(figures.gapText().contains("two days in a row from 4 March"));
    CHECK(figures.gapText().contains("back since"));
}

TEST_CASE_FIXTURE(FiguresFixture, "practice every day is called that") {
    const Id id = addPassage("coda");
    for (int days = 0; days < 3; ++days) {
        practise(id, 10);
        clock->nextDay();
    }
    read();
    CHECK(figures.gapText() == "You have not missed a day since you began.");
    for (int days = 3; days < 40; ++days) {
        practise(id, 10);
        clock->nextDay();
    }
    read();
    CHECK(figures.gapText() == "You have not missed a day in four weeks.");
}

TEST_CASE_FIXTURE(FiguresFixture, "misses stand at their bars; the worst are marked") {
    const Id id = broken();
    read(id);
    const QVariantList bars = figures.breaks()["bars"].toList();
    REQUIRE(bars.size() == 12); // more than eight bars: by bar
    CHECK(bars[6].toMap()["label"].toString() == "7");
    CHECK(bars[6].toMap()["spoken"].toString() == "bar 7: 5 misses");
    CHECK(bars[6].toMap()["beats"].toList()[0].toMap()["worst"].toBool());
    CHECK(!bars[1].toMap()["beats"].toList()[0].toMap()["worst"].toBool());
    CHECK(figures.breaks()["note"].toString() == "6 misses in 6 runs, by bar");
}

TEST_CASE_FIXTURE(FiguresFixture, "with no passage chosen, the breaks are those of the one that went worst") {
    broken();
    const Id better = addPassage("coda");
    miss(better, {1, 1});
    for (int run = 0; run < 5; ++run) practise(better, 1); // the last one that was played
    read();
    REQUIRE(!figures.worst().isEmpty());
    CHECK(figures.worst()[0].toMap()["title"].toString() == "trio");
    CHECK(figures.breaks()["title"].toString().contains("trio"));
}

TEST_CASE_FIXTURE(FiguresFixture, "a short passage is shown beat by beat") {
    const Id id = addPassage("coda");
    miss(id, {2, 3});
    read(id);
    const QVariantList bars = figures.breaks()["bars"].toList();
    REQUIRE(bars.size() == 4);
    CHECK(bars[1].toMap()["beats"].toList().size() == 4);
    CHECK(figures.breaks()["note"].toString() == "1 miss in 1 run, by bar and beat");
}

TEST_CASE_FIXTURE(FiguresFixture, "one button makes a passage of the bars that break, with a bar of run-up") {
    const Id id = broken();
    read(id);
    CHECK(figures.stretchText() == "New passage: bars 6–7");
    figures.makeStretch();
    CHECK(figures.madeText() == "Created “trio: bars 6–7”");
    const PassageRecord* made = book->notebook().passage(*Id::parse(figures.made().toStdString()));
    REQUIRE(made != nullptr);
    CHECK(made->passage.music.firstBar == 6);
    CHECK(made->passage.music.bars == 2);
    CHECK(made->passage.tempi == book->notebook().passage(id)->passage.tempi);
    CHECK(book->notebook().passage(id)->passage.music.bars == 12); // the whole passage is unchanged
}

TEST_CASE_FIXTURE(FiguresFixture,
                  "built up from the last bar: every part but the whole, ending where it ends") {
    const Id id = addPassage("coda", {}, 41);
    read(id);
    CHECK(figures.buildUpText() == "Last bar first");
    figures.buildUp();
    const auto ids = book->notebook().passages();
    REQUIRE(ids.size() == 4);
    for (std::size_t part = 1; part < 4; ++part) {
        const Music& music = book->notebook().passage(ids[part])->passage.music;
        CHECK(music.bars == static_cast<int>(part));
        CHECK(music.firstBar + music.bars == 45);
    }
    CHECK(figures.madeText() == "Created 3 passages, starting with “coda: bar 44”");
}

TEST_CASE_FIXTURE(FiguresFixture,
                  "in parts that overlap by a beat: each lands where the next begins, to the end") {
    const Id id = addPassage("coda", {}, 41);
    read(id);
    CHECK(figures.partsText() == "Split in two");
    figures.makeParts();
    const auto ids = book->notebook().passages();
    REQUIRE(ids.size() == 3);
    for (std::size_t part = 1; part < 3; ++part) {
        const Passage& made = book->notebook().passage(ids[part])->passage;
        CHECK(made.music.firstBar == 39 + 2 * static_cast<int>(part));
        CHECK(made.music.bars == 2);
        CHECK(made.title.origin == id);
        if (part == 1) CHECK(made.music.landing);
    }
}

TEST_CASE("a long name leaves room for the bars") {
    Passage whole;
    whole.title.name = std::string(120, 'x');
    const Passage made = models::passageOfBars(whole, {2, 1});
    CHECK(made.title.name.size() == 120);
    CHECK(made.title.name.ends_with("x: bar 2"));
}
