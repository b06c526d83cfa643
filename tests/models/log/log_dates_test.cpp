// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_dates.h"

#include "../../practice/book_fixture.h"
#include "models/log/log_model.h"

using namespace piolo;
using test::BookFixture;

namespace {

/// Two runs today and three by a clock that is a hundred days ahead.
struct AheadFixture : BookFixture {
    models::LogModel log{*book};
    Id passage;

    AheadFixture() {
        passage = addPassage("coda");
        run(passage, 60);
        run(passage, 60);
        clock->millis += 100LL * 86'400'000;
        for (int times = 0; times < 3; ++times) run(passage, 60);
        clock->millis -= 100LL * 86'400'000;
        log.setShown(true);
    }
    [[nodiscard]] models::LogDates& dates() { return *log.dates(); }
    [[nodiscard]] std::vector<std::string> days() const {
        std::vector<std::string> days;
        for (const Entry& entry : book->notebook().passage(passage)->entries)
            days.push_back(entry.at.date().text());
        return days;
    }
};

} // namespace

TEST_CASE_FIXTURE(AheadFixture,
                  "entries in the future are named with their last date, and one day puts them right") {
    CHECK(dates().text() == "3 entries are dated in the future, up to 9 June. Was a clock wrong?");
    CHECK(dates().day() == "1 March 2026");
    CHECK(log.count() == 2);
    dates().setDay("28 February 2026");
    CHECK(dates().dayFault() == "");
    dates().putRight();
    CHECK(days() ==
          std::vector<std::string>{"2026-03-01", "2026-03-01", "2026-02-28", "2026-02-28", "2026-02-28"});
    CHECK(dates().text() == "");
    CHECK(dates().doneText() == "Dates corrected");
    REQUIRE(book->flush(10'000));
    CHECK(anotherBook()->notebook().passage(passage)->lastDay == Date{2026, 2, 28});
    dates().undo();
    CHECK(days().back() == "2026-06-09");
    CHECK(dates().text() != "");
    CHECK(dates().doneText() == "");
}

TEST_CASE_FIXTURE(AheadFixture, "a day in the future, or none, changes nothing and says so") {
    const auto before = days();
    for (const char* wrong : {"2 March 2026", "", "yesterday"}) {
        dates().setDay(wrong);
        CHECK(dates().dayFault() != "");
        dates().putRight();
        CHECK(days() == before);
    }
}

TEST_CASE_FIXTURE(AheadFixture, "what was corrected is named until the log is closed") {
    dates().putRight();
    log.setShown(false);
    log.setShown(true);
    CHECK(dates().doneText() == "");
    CHECK(dates().text() == "");
    dates().undo();
    CHECK(days().back() == "2026-03-01");
}

TEST_CASE_FIXTURE(AheadFixture, "what is dated tomorrow is no fault: it is tomorrow elsewhere") {
    dates().putRight();
    clock->nextDay();
    run(passage, 60);
    clock->millis -= 86'400'000;
    log.setShown(false);
    log.setShown(true);
    CHECK(dates().text() == "");
}
