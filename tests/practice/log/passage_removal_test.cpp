// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/passage_removal.h"

#include "../book_fixture.h"

using namespace piolo;
using practice::setRemoved;
using test::BookFixture;

TEST_CASE_FIXTURE(BookFixture, "a passage is removed and restored once") {
    const Id first = addPassage("first");
    const Id second = addPassage("second");
    CHECK(setRemoved(*book, first, true));
    CHECK(book->notebook().passage(first)->removed);
    CHECK_FALSE(book->notebook().passage(second)->removed);
    CHECK_FALSE(setRemoved(*book, first, true));
    CHECK(setRemoved(*book, first, false));
    CHECK_FALSE(setRemoved(*book, first, false));
    CHECK_FALSE(book->notebook().passage(first)->removed);
}

TEST_CASE_FIXTURE(BookFixture, "an unknown passage cannot be removed, and none can in a folder that is only "
                               "read") {
    const Id known = addPassage("first");
    const auto before = book->notebook().factCount();
    CHECK_FALSE(setRemoved(*book, book->newId(), true));
    CHECK_FALSE(setRemoved(*book, {}, true));
    REQUIRE(book->flush(10'000));
    const auto second = anotherBook();
    CHECK_FALSE(setRemoved(*second, known, true));
    CHECK(book->notebook().factCount() == before);
}
