// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/paper/paper_runs.h"

#include "../../practice/book_fixture.h"
#include "models/log/log_model.h"
#include "models/text/typed_values.h"

#include <QAbstractItemModelTester>

using namespace piolo;
using models::PaperRuns;
using test::BookFixture;

namespace {

struct PaperFixture : BookFixture {
    PaperFixture() {
        id = addPassage("coda");
        run(id, 90);
        clock->nextDay();
        clock->nextDay();
        runs.show(text(id));
    }
    [[nodiscard]] const PassageRecord& record() const { return *book->notebook().passage(id); }
    [[nodiscard]] QString outcome(int figure) const {
        return runs.outcome().at(figure).toMap().value("value").toString();
    }
    Id id;
    PaperRuns runs{*book};
    QAbstractItemModelTester tester{&runs, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_CASE("a sheet begins at the passage's current tempo, played today, with nothing ticked") {
    PaperFixture sheet;
    CHECK(sheet.runs.isOpen());
    CHECK(sheet.runs.title() == "coda");
    CHECK(sheet.runs.circles() == 5);
    CHECK(sheet.runs.lowest() == "90");
    CHECK(sheet.runs.day() == models::dateForTyping({2026, 3, 3}));
    CHECK(sheet.runs.rowCount() == 4);
    CHECK(sheet.runs.data(sheet.runs.index(3), PaperRuns::TargetRole).toBool());
    CHECK(sheet.runs.counted() == "");
    CHECK_FALSE(sheet.runs.canKeep());
    sheet.runs.keep();
    CHECK(sheet.record().entries.size() == 1);
}

TEST_CASE("the saved result is the one shown before: tempo, streak, best and full streaks at the target") {
    PaperFixture sheet;
    sheet.runs.setClean(0, 5);
    sheet.runs.setMissed(0, 2);
    sheet.runs.setClean(1, 3);
    CHECK(sheet.runs.counted() == "8 clean, 2 missed");
    CHECK(sheet.outcome(0) == "92");
    CHECK(sheet.outcome(1) == "3 of 5");
    CHECK(sheet.outcome(2) == "90");
    CHECK(sheet.outcome(3) == "0");
    REQUIRE(sheet.runs.canKeep());
    int reported = 0;
    QObject::connect(sheet.book.get(), &practice::PracticeBook::changed, [&] { ++reported; });
    sheet.runs.keep();
    CHECK(reported == 1);
    CHECK(sheet.record().standing == Standing{Tempo::bpm(92), 3});
    CHECK(sheet.record().best == Tempo::bpm(90));
    REQUIRE(sheet.record().entries.size() == 11);
    for (std::size_t entry = 1; entry < 11; ++entry) {
        CHECK(sheet.record().entries[entry].entered);
        CHECK(sheet.record().entries[entry].millis == 0);
    }
    CHECK(sheet.runs.kept() == "10 runs were added to the log.");
    CHECK(sheet.runs.counted() == "");
    CHECK(sheet.runs.lowest() == "92");
}

TEST_CASE("the day may be an earlier one, but not before the passage's last, and not one to come") {
    PaperFixture sheet;
    sheet.runs.setClean(0, 1);
    for (const char* wrong : {"2026-02-28", "2026-03-04", "some day"}) {
        sheet.runs.setDay(wrong);
        CHECK(sheet.runs.dayFault() != "");
        CHECK_FALSE(sheet.runs.canKeep());
    }
    sheet.runs.setDay("2026-02-28");
    CHECK(sheet.runs.dayFault().startsWith("not before 1 March"));
    sheet.runs.setDay("2026-03-02");
    CHECK(sheet.runs.dayFault() == "");
    sheet.runs.keep();
    CHECK(sheet.record().lastDay == Date{2026, 3, 2});
    CHECK(sheet.book->notebook().day({2026, 3, 2}, sheet.id).clean == 1);
    CHECK(sheet.book->notebook().day({2026, 3, 3}, sheet.id).runs == 0);
}

TEST_CASE("on the passage's last day the streak of that day goes on") {
    PaperFixture sheet;
    sheet.runs.setDay("2026-03-01");
    sheet.runs.setClean(0, 4);
    CHECK(sheet.outcome(0) == "92");
    sheet.runs.keep();
    CHECK(sheet.record().standing == Standing{Tempo::bpm(92), 0});
}

TEST_CASE("what was kept can be taken back at once, all of it, and one by one in the log") {
    PaperFixture sheet;
    const Standing before = sheet.record().standing;
    sheet.runs.setClean(0, 5);
    sheet.runs.keep();
    CHECK(sheet.record().standing.tempo == Tempo::bpm(92));
    sheet.runs.takeBack();
    CHECK(sheet.record().standing == before);
    CHECK(sheet.record().entries.size() == 1);
    CHECK(sheet.runs.kept() == "");
    sheet.runs.setClean(0, 1);
    sheet.runs.keep();
    models::LogModel log(*sheet.book);
    log.setShown(true);
    log.takeBack(BookFixture::text(sheet.id),
                 QString::fromStdString(sheet.record().entries.back().id.text()));
    CHECK(sheet.record().entries.size() == 1);
}

TEST_CASE("counts stay within the sheet's circles and the limits of a box, and invalid rows are ignored") {
    PaperFixture sheet;
    sheet.runs.setClean(0, 9);
    sheet.runs.setMissed(0, 1000);
    CHECK(sheet.runs.data(sheet.runs.index(0), PaperRuns::CleanRole) == 5);
    CHECK(sheet.runs.data(sheet.runs.index(0), PaperRuns::MissedRole) == PaperRuns::mostMisses);
    sheet.runs.setClean(0, -1);
    sheet.runs.setMissed(0, -1);
    sheet.runs.setClean(99, 1);
    sheet.runs.setMissed(-1, 1);
    CHECK(sheet.runs.counted() == "");
}

TEST_CASE("another lowest tempo makes another ladder; an invalid one is reported") {
    PaperFixture sheet;
    sheet.runs.setClean(0, 2);
    sheet.runs.setLowest("80");
    CHECK(sheet.runs.rowCount() == 9);
    CHECK(sheet.runs.counted() == "");
    sheet.runs.setLowest("x");
    CHECK(sheet.runs.lowestFault() != "");
    CHECK(sheet.runs.rowCount() == 0);
}

TEST_CASE("an edited rule makes another ladder, and input stays when another passage changes") {
    PaperFixture sheet;
    sheet.runs.setClean(0, 2);
    sheet.addPassage("trio");
    sheet.runs.show(BookFixture::text(sheet.id));
    CHECK(sheet.runs.counted() == "2 clean, 0 missed");
    Tempi tempi = sheet.record().passage.tempi;
    tempi.rule.climb = 6;
    sheet.book->record(PassageFact{sheet.id, {}, {}, tempi});
    CHECK(sheet.runs.rowCount() == 2);
    CHECK(sheet.runs.counted() == "");
    sheet.runs.show("");
    CHECK_FALSE(sheet.runs.isOpen());
    CHECK(sheet.runs.outcome().isEmpty());
}

TEST_CASE("the log shows that runs were entered, in lines of their own, without a time of day") {
    PaperFixture sheet;
    sheet.run(sheet.id, 90);
    sheet.runs.show(BookFixture::text(sheet.id));
    sheet.runs.setClean(0, 2);
    sheet.runs.keep();
    models::LogModel log(*sheet.book);
    log.setShown(true);
    const auto lines = log.data(log.index(0), models::LogModel::Lines).toList();
    REQUIRE(lines.size() == 2);
    const QVariantMap played = lines[0].toMap();
    const QVariantMap entered = lines[1].toMap();
    CHECK(played["time"] == "08:00");
    CHECK_FALSE(played["effect"].toString().contains("paper"));
    CHECK(entered["time"] == "paper");
    CHECK(entered["effect"].toString().contains("on paper"));
    CHECK(entered["marks"] == "●●");
}
