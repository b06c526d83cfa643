// SPDX-License-Identifier: GPL-3.0-or-later
// Laws of a passage's history, without a notebook.
#include "core/history/passage_history.h"

#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

PassageHistory historyOf(const Scribe& scribe) {
    static const WrongClocks none;
    PassageHistory history(scribe.passage, none);
    for (const Fact& fact : scribe.facts) history.add(fact);
    return history;
}

} // namespace

TEST_CASE("a record is folded once and remains until the next fact") {
    Scribe scribe;
    scribe.clean(2);
    PassageHistory history = historyOf(scribe);
    history.record()->removed = true;
    CHECK(history.record()->removed);
    CHECK(history.record()->entries.size() == 2);
}

TEST_CASE("whether a day is opened can be queried before anything was folded") {
    Scribe scribe;
    scribe.turnTo("2026-03-02");
    const Id run = scribe.clean();
    CHECK(historyOf(scribe).opened(day("2026-03-02")));
    scribe.back(run);
    CHECK_FALSE(historyOf(scribe).opened(day("2026-03-02")));
}

TEST_CASE("what back would retract can be queried before anything was folded") {
    Scribe scribe;
    const Id first = scribe.clean();
    scribe.back(scribe.clean());
    CHECK(historyOf(scribe).backTarget("stand") == first);
}

TEST_CASE("a history extends from its first run or tempo to its last, in any order of arrival") {
    Scribe scribe;
    CHECK_FALSE(historyOf(scribe).reaches(day("2026-03-01")));
    scribe.turnTo("2026-03-09");
    scribe.clean();
    scribe.turnTo("2026-03-04");
    scribe.tempo(72);
    scribe.turnTo("2026-03-20");
    scribe.edit(usualTempi());
    PassageHistory history = historyOf(scribe);
    CHECK_FALSE(history.reaches(day("2026-03-03")));
    CHECK(history.reaches(day("2026-03-04")));
    CHECK(history.reaches(day("2026-03-09")));
    CHECK_FALSE(history.reaches(day("2026-03-10")));
}
