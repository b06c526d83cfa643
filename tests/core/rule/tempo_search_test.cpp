// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/tempo_search.h"

#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

TEST_CASE("each miss drops and the first full streak has found the tempo") {
    Scribe scribe;
    scribe.tempo(92, Reason::named);
    scribe.miss();
    scribe.clean(2);
    scribe.miss();
    scribe.clean(4);
    const auto looking = searchesIn(scribe.record());
    REQUIRE(looking.size() == 1);
    CHECK_FALSE(looking.front().over);
    CHECK(looking.front().named == Tempo::bpm(92));
    scribe.clean();
    const auto found = searchesIn(scribe.record());
    REQUIRE(found.size() == 1);
    CHECK(found.front().over);
    CHECK(found.front().found == Tempo::bpm(84));
    scribe.clean(5);
    CHECK(searchesIn(scribe.record()).front().found == Tempo::bpm(84));
}

TEST_CASE("a search is given up when another tempo is set or another day begins") {
    Scribe scribe;
    scribe.tempo(92, Reason::named);
    scribe.tempo(70);
    scribe.clean(5);
    scribe.tempo(88, Reason::named);
    scribe.clean(4);
    scribe.turnTo("2026-03-02");
    scribe.clean(5);
    scribe.tempo(90, Reason::named);
    scribe.tempo(86, Reason::named);
    scribe.clean(5);
    const auto searches = searchesIn(scribe.record());
    REQUIRE(searches.size() == 4);
    for (int given = 0; given < 3; ++given) {
        CHECK(searches[static_cast<std::size_t>(given)].over);
        CHECK_FALSE(searches[static_cast<std::size_t>(given)].found);
    }
    CHECK(searches.back().found == Tempo::bpm(86));
    const auto today = searchOn(scribe.record(), day("2026-03-02"));
    REQUIRE(today);
    CHECK(today->begun == searches.back().begun);
    CHECK(today->found == Tempo::bpm(86));
    CHECK_FALSE(searchOn(scribe.record(), day("2026-03-03")));
}

TEST_CASE("a search that was taken back does not count") {
    Scribe scribe;
    scribe.tempo(92, Reason::named);
    scribe.back();
    CHECK(searchesIn(scribe.record()).empty());
}
