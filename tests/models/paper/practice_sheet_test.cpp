// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/paper/practice_sheet.h"

#include "../../practice/book_fixture.h"
#include "plots/paper/paper_words.h"

#include <QAbstractItemModelTester>
#include <QFile>

using namespace piolo;
using models::PassagePicks;
using models::PracticeSheet;
using test::BookFixture;

TEST_CASE("a sheet has the rungs from the current tempo to the target, and the bars, meter, tempi and rule") {
    BookFixture fixture;
    const Id piece = fixture.addPiece("Ferrywake Suite");
    const Id id = fixture.addPassage("Letter C", piece, 41);
    fixture.run(id, 90);
    const auto ladder = plots::paperLadder(*fixture.book->notebook().passage(id), "Ferrywake Suite");
    CHECK(ladder.title == "Letter C");
    CHECK(ladder.lines == QStringList{"Ferrywake Suite · bars 41–44 · 4/4", "♩ = 90, to 96 · quarters",
                                      "The rule: a miss drops 4, five clean in a row climb 2."});
    REQUIRE(ladder.rungs.size() == 4);
    CHECK(ladder.rungs.front().tempo == "90");
    CHECK_FALSE(ladder.rungs.front().target);
    CHECK(ladder.rungs.back().tempo == "96");
    CHECK(ladder.rungs.back().target);
    CHECK(ladder.circles == 5);
}

TEST_CASE("a passage at its target has one rung, and a gentle rule says so in a line of its own") {
    BookFixture fixture;
    const Id id = fixture.addPassage("coda");
    Tempi tempi = fixture.book->notebook().passage(id)->passage.tempi;
    tempi.rule.gentle = true;
    fixture.book->record(PassageFact{id, {}, {}, tempi});
    fixture.run(id, 96);
    const auto ladder = plots::paperLadder(*fixture.book->notebook().passage(id), "");
    CHECK(ladder.rungs.size() == 1);
    REQUIRE(ladder.lines.size() == 4);
    CHECK(ladder.lines[0] == "bars 1–4 · 4/4");
    CHECK(ladder.lines[1] == "♩ = 96 · quarters");
    CHECK(ladder.lines[3].contains("Near the target"));
}

TEST_CASE("ticks are kept when passages are added, and removed with a removed passage") {
    BookFixture fixture;
    PassagePicks picks(*fixture.book);
    const QAbstractItemModelTester tester(&picks, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const Id coda = fixture.addPassage("coda");
    picks.pickOnly(BookFixture::text(coda));
    fixture.addPassage("trio");
    CHECK(picks.count() == 2);
    CHECK(picks.ids() == std::vector<Id>{coda});
    CHECK(picks.words() == "1 of 2 passages");
    picks.pickAll(true);
    CHECK(picks.picked() == 2);
    fixture.book->record(RemovalFact{coda});
    CHECK(picks.count() == 1);
    CHECK(picks.picked() == 1);
    picks.pick(0, false);
    CHECK(picks.picked() == 0);
    picks.pick(7, true);
    picks.pickOnly("not an id");
    CHECK(picks.picked() == 0);
}

TEST_CASE("a sheet says how many pages it takes, and is saved as PDF, SVG or PNG by its name") {
    BookFixture fixture;
    PassagePicks picks(*fixture.book);
    PracticeSheet sheet(*fixture.book, picks);
    CHECK_FALSE(sheet.ready());
    CHECK(sheet.summary() == "Tick the passages to print.");
    CHECK(sheet.save(QString::fromStdString(fixture.path("x.pdf"))) == sheet.summary());
    fixture.addPassage("coda");
    picks.pickAll(true);
    CHECK(sheet.ready());
    sheet.setPaper("a4");
    CHECK(sheet.summary() == "1 passage on one page");
    for (const auto& [name, start] : {std::pair{"x.pdf", "%PDF"}, {"x.PNG", "\x89PNG"}, {"x.svg", "<?xml"}}) {
        const QString path = QString::fromStdString(fixture.path(name));
        CHECK(sheet.save(path) == "");
        QFile file(path);
        REQUIRE(file.open(QIODevice::ReadOnly));
        CHECK(file.readAll().startsWith(start));
    }
    CHECK(sheet.save(QString::fromStdString(fixture.path("without an ending"))) == "");
    CHECK(QFile::exists(QString::fromStdString(fixture.path("without an ending.pdf"))));
    CHECK(sheet.save(QString::fromStdString(fixture.path("x.txt"))).contains(".pdf, .svg or .png"));
    CHECK(sheet.save("/nowhere/x.pdf").contains("cannot be written"));
    sheet.setPaper("parchment");
    CHECK(sheet.paper() == "a4");
    sheet.setPaper("letter");
    CHECK(sheet.paper() == "letter");
}

TEST_CASE("more passages than fit on a sheet are reported") {
    BookFixture fixture;
    PassagePicks picks(*fixture.book);
    const PracticeSheet sheet(*fixture.book, picks);
    for (int number = 0; number < 21; ++number) fixture.addPassage("bars " + std::to_string(number));
    picks.pickAll(true);
    CHECK_FALSE(sheet.ready());
    CHECK(sheet.summary() == "At most 20 passages fit on one sheet.");
}
