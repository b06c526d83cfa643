// SPDX-License-Identifier: GPL-3.0-or-later
// Laws of adding facts: one by one or all at once.
#include "random_history.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

TEST_CASE("add distinguishes a new fact from a known one") {
    const Scribe scribe;
    Notebook notebook;
    CHECK(notebook.add(scribe.facts.front()));
    CHECK_FALSE(notebook.add(scribe.facts.front()));
}

TEST_CASE("facts added all at once give the same as one by one, and duplicates count once") {
    Scribe scribe;
    scribe.clean(3);
    scribe.add(PieceFact{Id{5, 5}, "Ferrywake Suite", {}, {}});
    scribe.miss();
    std::vector<Fact> facts = scribe.facts;
    facts.push_back(facts[1]);
    facts.push_back(facts[2]);
    Notebook notebook;
    notebook.add(facts[3]);
    notebook.addAll(std::vector<Fact>(facts));
    const Notebook folded = fold(std::move(facts));
    for (const Notebook* const each : std::vector<const Notebook*>{&notebook, &folded}) {
        CHECK(each->factCount() == scribe.facts.size());
        REQUIRE(each->passage(scribe.passage) != nullptr);
        CHECK(each->passage(scribe.passage)->standing == scribe.standing());
        CHECK(each->passage(scribe.passage)->entries.size() == 4);
        CHECK(each->pieces().size() == 1);
    }
}

TEST_CASE("passages are in the order of their definitions, whatever comes before those") {
    Scribe early;
    early.run(80, Mark::clean);
    std::swap(early.facts[0].order, early.facts[1].order);
    early.facts[0].order = 900;
    Scribe late;
    late.passage = Id{9, 9};
    late.facts.clear();
    late.define(usualTempi());
    late.facts.back().id = Id{2, 1};
    late.facts.back().order = 500;
    Notebook notebook = early.notebook();
    notebook.add(late.facts.front());
    CHECK(notebook.passages() == std::vector<Id>{Id{9, 9}, Id{7, 7}});
}
