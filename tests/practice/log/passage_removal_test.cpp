// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/passage_removal.h"

#include "../book_fixture.h"

using namespace piolo;
using practice::PassageRemoval;
using test::BookFixture;

TEST_CASE_FIXTURE(BookFixture, "a passage is removed and restored once, and only the last removal is kept") {
    const Id first = addPassage("first");
    const Id second = addPassage("second");
    PassageRemoval removal(*book);
    CHECK(removal.last().isNone());
    CHECK(removal.remove(first));
    CHECK(book->notebook().passage(first)->removed);
    CHECK(removal.last() == first);
    CHECK_FALSE(removal.remove(first));
    CHECK(removal.remove(second));
    CHECK(removal.last() == second);
    CHECK(removal.restore(first)); // an earlier one
    CHECK(removal.last() == second);
    CHECK(removal.restore(second));
    CHECK(removal.last().isNone());
    CHECK_FALSE(removal.restore(second));
    CHECK_FALSE(book->notebook().passage(second)->removed);
}

TEST_CASE_FIXTURE(BookFixture, "an unknown passage cannot be removed, and none can in a folder that is only "
                               "read") {
    const Id known = addPassage("first");
    PassageRemoval removal(*book);
    const auto before = book->notebook().factCount();
    CHECK_FALSE(removal.remove(book->newId()));
    CHECK_FALSE(removal.remove({}));
    REQUIRE(book->flush(10'000));
    const auto second = anotherBook();
    PassageRemoval other(*second);
    CHECK_FALSE(other.remove(known));
    CHECK(other.last().isNone());
    CHECK(book->notebook().factCount() == before);
}
