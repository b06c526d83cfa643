// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/import_plan.h"

#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

const Id suite{5, 1};

/// A teacher's set of one piece and one passage, the same passage as Scribe's.
PassageSet aSet() {
    PassageSet set;
    set.pieces.push_back({suite, "Ferrywake Suite", "Clarinet in B♭", Date{2026, 5, 9}});
    Passage passage;
    passage.id = Id{7, 7};
    passage.title = {"Letter C", suite};
    passage.tempi = usualTempi();
    set.passages.push_back(passage);
    return set;
}

/// A student's folder that starts empty.
struct Student : Scribe {
    Student() { facts.clear(); }
    std::vector<ImportItem> import(const PassageSet& set, Differing differing = Differing::leave) {
        const auto plan = importPlan(set, notebook());
        for (const ImportItem& item : plan)
            if (takes(item, differing))
                for (const FactBody& fact : item.facts) add(fact);
        return plan;
    }
    void edit(FactBody body) { add(std::move(body)); }
};

std::vector<ImportState> states(const std::vector<ImportItem>& plan) {
    std::vector<ImportState> found;
    for (const ImportItem& item : plan) found.push_back(item.state);
    return found;
}

using enum ImportState;

} // namespace

TEST_CASE("new items are added, and importing the same set twice changes nothing") {
    Student student;
    CHECK(states(student.import(aSet())) == std::vector{added, added});
    CHECK(student.facts.size() == 2);
    CHECK(wholeSet(student.notebook()).value() == aSet());
    const auto again = student.import(aSet(), Differing::replace);
    CHECK(states(again) == std::vector{same, same});
    CHECK(again[0].facts.empty());
    CHECK(again[1].facts.empty());
    CHECK(student.facts.size() == 2);
}

TEST_CASE("a piece keeps everything known about it through an import, whether it is new or known") {
    PassageSet set = aSet();
    set.pieces[0].composer = "Ada Finch";
    set.pieces[0].transposition = -3;
    set.pieces[0].bars = 148;
    set.pieces[0].music = {Meter::parse("6/8", "3/8", "").value(), Tempo::bpm(96)};
    set.pieces[0].notes = "Cue: oboe";
    const auto fresh = importPlan(set, Notebook{});
    Student student;
    student.import(aSet());
    const auto known = importPlan(set, student.notebook());
    REQUIRE(fresh.at(0).facts.size() == 1);
    REQUIRE(known.at(0).facts.size() == 1);
    for (const auto& plan : {fresh, known}) {
        const auto& fact = std::get<PieceFact>(plan[0].facts[0]);
        CHECK(fact.composer == "Ada Finch");
        CHECK(fact.transposition == -3);
        CHECK(fact.bars == 148);
        CHECK(fact.music == set.pieces[0].music);
        CHECK(fact.notes == "Cue: oboe");
    }
    CHECK_FALSE(std::get<PieceFact>(known[0].facts[0]).name.has_value());
}

TEST_CASE("what differs is reported value by value and left alone until it is asked for") {
    Student student;
    student.import(aSet());
    PassageSet newer = aSet();
    newer.pieces[0].due.reset();
    newer.passages[0].tempi.rule.target = Tempo::bpm(104);
    newer.passages[0].music.pickup = {1, 8};
    newer.passages[0].click.accents = {Accent::strong, Accent::silent};
    const auto plan = student.import(newer);
    CHECK(states(plan) == std::vector{differs, differs});
    CHECK(plan[0].differences == std::vector<Difference>{{"due", "2026-05-09", ""}});
    CHECK(plan[1].differences == std::vector<Difference>{{"music.pickup", "", "1/8"},
                                                         {"tempi.target", "96", "104"},
                                                         {"click.accents", "", "strong silent"}});
    CHECK_FALSE(plan[1].editedHere);
    CHECK(student.facts.size() == 2);
    student.import(newer, Differing::replace);
    CHECK(wholeSet(student.notebook()).value() == newer);
    const auto& fact = std::get<PassageFact>(student.facts.back().body);
    CHECK_FALSE(fact.title);
    CHECK(fact.tempi);
    CHECK(fact.imported);
}

TEST_CASE("every value of a piece and a passage that can differ is reported by its key") {
    const PassageSet here = aSet();
    Piece piece{suite, "Suite", "Clarinet in A", {}};
    CHECK(differences(here.pieces[0], piece).size() == 3);
    piece.composer = "Ada Finch";
    piece.transposition = -3;
    piece.bars = 148;
    piece.music = {Meter::parse("7/8", "1/8", "").value(), Tempo::bpm(132)};
    piece.notes = "Cue: oboe";
    CHECK(differences(here.pieces[0], piece).size() == 3 + 4 + 4);
    Passage other = here.passages[0];
    other.title = {"Letter D", {}};
    other.music = {Meter::parse("7/8", "1/8", "").value(), 3, {1, 8}, 2, 5, false, 2, 3};
    other.tempi = {Tempo::bpm(81), {StepKind::notches, 1, 1, 3, Tempo::bpm(41), Tempo::bpm(97)}};
    other.click = {ClickOn::offbeats, {Accent::plain}, {2, 1}, SwungNotes::sixteenths, 2, 3, 4, 5, 6,
                   {{9, 1, 2}},       Tempo::bpm(70)};
    const auto all = differences(here.passages[0], other);
    // The number of values in title, music, tempi and click.
    CHECK(all.size() == 2 + 10 + 7 + 11);
    CHECK(all.front() == Difference{"title.name", "Letter C", "Letter D"});
    CHECK(all.back() == Difference{"click.breathBelow", "400", "70"});
    CHECK(differingGroups(here.passages[0], other) == GroupMarks{true, true, true, true});
    CHECK(differences(other, other).empty());
    CHECK_FALSE(differingGroups(other, other).any());
}

TEST_CASE("a passage's manner, notes and origin travel with it and are reported if they differ") {
    PassageSet set = aSet();
    Passage& passage = set.passages.front();
    passage.manner = Manner{Articulation::slurred, Rhythm::groups, 3, "side B flat"};
    passage.notes = {{{'C', 0, 5}, 72, {}, {1, 4}, false, false, {}}};
    passage.title.origin = Id{7, 8};
    Student student;
    student.import(set);
    CHECK(student.record().passage == passage);
    CHECK(states(student.import(set)) == std::vector{same, same});
    passage.manner.articulation = Articulation::tongued;
    passage.notes.front().sounding = 70;
    passage.title.origin = {};
    const auto plan = student.import(set, Differing::replace);
    CHECK(plan[1].differences == std::vector<Difference>{{"title.origin", Id{7, 8}.text(), ""},
                                                         {"manner.articulation", "slurred", "tongued"},
                                                         {"notation", "1", "1 others"}});
    CHECK(student.record().passage == passage);
    passage.notes.clear();
    CHECK(student.import(set, Differing::replace)[1].differences ==
          std::vector<Difference>{{"notation", "1", "0"}});
    CHECK(student.record().passage.notes.empty());
}

TEST_CASE("an edit by hand after an import is reported as such, group by group") {
    Student student;
    student.import(aSet());
    Tempi slower = usualTempi();
    slower.rule.target = Tempo::bpm(90);
    student.edit(PassageFact{student.passage, {}, {}, slower});
    const auto mine = student.import(aSet());
    CHECK(mine[1].state == differs);
    CHECK(mine[1].editedHere);
    PassageSet renamed = aSet();
    renamed.passages[0].tempi = slower;
    renamed.passages[0].title.name = "Letter C, slowly";
    CHECK_FALSE(student.import(renamed)[1].editedHere); // the title that differs was not edited here
    student.import(aSet(), Differing::replace);
    CHECK_FALSE(student.record().editedHere.any());
}

TEST_CASE("an item created here and never imported is not reported as edited after an import") {
    Student student;
    student.define(usualTempi());
    PassageSet set = aSet();
    const auto plan = student.import(set);
    CHECK(states(plan) == std::vector{added, differs});
    CHECK_FALSE(plan[1].editedHere);
}

TEST_CASE("a removed item stays removed unless replaced, and is then restored as in the set") {
    Student student;
    student.import(aSet());
    student.edit(RemovalFact{suite, true});
    student.edit(RemovalFact{student.passage, true});
    PassageSet newer = aSet();
    newer.passages[0].tempi.start = Tempo::bpm(72);
    CHECK(states(student.import(newer)) == std::vector{removedHere, removedHere});
    CHECK(student.notebook().passages().empty());
    student.import(newer, Differing::replace);
    CHECK(wholeSet(student.notebook()).value() == newer);
}

TEST_CASE("an import moves a tempo no more than an edit by hand would") {
    Student student;
    student.import(aSet());
    student.clean(3);
    const Standing before = student.standing();
    PassageSet newer = aSet();
    newer.passages[0].tempi.rule.target = Tempo::bpm(120);
    student.import(newer, Differing::replace);
    CHECK(student.standing() == before);
}

TEST_CASE("a chosen set includes the passages' pieces, even removed ones, in the notebook's order") {
    Student student;
    PassageSet set = aSet();
    set.pieces.push_back({Id{5, 2}, "Tallow Bridge March", "", {}});
    Passage trio = set.passages[0];
    trio.id = Id{7, 8};
    trio.title = {"Trio", {}};
    set.passages.push_back(trio);
    student.import(set);
    student.edit(RemovalFact{suite, true});
    const auto notebook = student.notebook();
    const Id both[]{Id{7, 8}, Id{7, 7}};
    const auto chosen = chosenSet(notebook, both).value();
    CHECK(chosen.pieces == std::vector{set.pieces[0]});
    CHECK(chosen.passages == set.passages);
    CHECK(wholeSet(notebook).value() == set); // the removed piece comes with its passage
    CHECK(chosenSet(notebook, std::span(both).first(1)).value().pieces.empty());
}

TEST_CASE("a passage whose piece no fact describes is reported, not exported without it") {
    Student student;
    student.edit(PassageFact{student.passage, Title{"Letter C", suite}, Music{}, usualTempi()});
    const auto set = wholeSet(student.notebook());
    REQUIRE_FALSE(set);
    CHECK(set.fault() == Fault{FaultNumber::unknownPassage, {}, {suite.text()}});
}
