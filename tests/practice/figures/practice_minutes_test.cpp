// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/practice_minutes.h"

#include "../book_fixture.h"

using namespace piolo;
using practice::minutesOn;
using test::BookFixture;

TEST_CASE_FIXTURE(BookFixture, "the minutes of a day are the whole minutes of all its passages together") {
    const Id first = addPassage("first");
    const Id second = addPassage("second");
    const Date day = book->today();
    CHECK(minutesOn(book->notebook(), day) == 0);
    for (int eightSeconds = 0; eightSeconds < 7; ++eightSeconds) run(first, 60);
    CHECK(minutesOn(book->notebook(), day) == 0);
    run(second, 60);
    CHECK(minutesOn(book->notebook(), day) == 1);
    clock->nextDay();
    CHECK(minutesOn(book->notebook(), book->today()) == 0);
    CHECK(minutesOn(book->notebook(), day) == 1);
}
