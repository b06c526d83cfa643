// SPDX-License-Identifier: GPL-3.0-or-later
#include "../scribe.h"
#include "core/rule/stage_step.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

const Id piece{5, 5};

class Staged : public Scribe {
public:
    explicit Staged(Stage stage) {
        Music music;
        music.firstBar = 41;
        music.bars = 4;
        add(PassageFact{passage, {}, music, {}});
        say(stage);
    }
    Id say(Stage stage) { return add(StageFact{passage, stage}); }
    Id through(bool finished, std::vector<Stop> stops) {
        return add(RunThroughFact{piece, {}, 200'000, finished, std::move(stops)});
    }
    [[nodiscard]] StageStep step() const {
        const Notebook notebook = this->notebook();
        return nextStep(*notebook.passage(passage), notebook.runThroughs(piece), notebook.settings());
    }
};

} // namespace

TEST_CASE("a passage is in the stage that the player chose last, and can go back") {
    Staged scribe(Stage::secure);
    CHECK(scribe.record().stage == Stage::secure);
    const Id further = scribe.say(Stage::withoutClick);
    CHECK(scribe.record().stage == Stage::withoutClick);
    scribe.say(Stage::slow);
    CHECK(scribe.record().stage == Stage::slow);
    scribe.back(scribe.facts.back().id);
    CHECK(scribe.record().stage == Stage::withoutClick);
    scribe.back(further);
    CHECK(scribe.record().stage == Stage::secure);
    CHECK(Scribe().record().stage == Stage::slow);
}

TEST_CASE("one secure leads from slow, and secures on as many days as are set lead from secure") {
    Staged scribe(Stage::slow);
    CHECK(scribe.step() == StageStep{Stage::secure, 0, 1});
    scribe.tempo(96);
    scribe.clean(5);
    CHECK(scribe.step() == StageStep{Stage::secure, 1, 1});
    scribe.clean(5);
    CHECK(scribe.step() == StageStep{Stage::secure, 1, 1});
    scribe.say(Stage::secure);
    CHECK(scribe.step() == StageStep{Stage::withoutClick, 1, 3});
    for (const char* date : {"2026-03-03", "2026-03-05"}) {
        scribe.turnTo(date);
        scribe.clean(5);
    }
    CHECK(scribe.step() == StageStep{Stage::withoutClick, 3, 3});
    CHECK(scribe.step().reached());
}

TEST_CASE("three clean runs in a row on one day, at the target, lead on from without the click and context") {
    for (const auto& [stage, kind, next] :
         {std::tuple{Stage::withoutClick, RunKind::silent, Stage::inContext},
          std::tuple{Stage::inContext, RunKind::context, Stage::runThroughs}}) {
        Staged scribe(stage);
        scribe.apart(kind, 96, Mark::clean);
        scribe.turnTo("2026-03-02");
        scribe.apart(kind, 96, Mark::clean);
        CHECK(scribe.step() == StageStep{next, 1, 3}); // another day starts again
        scribe.apart(kind, 96, Mark::clean);
        scribe.miss(); // a run of another kind does not count here
        scribe.apart(kind, 96, Mark::voided);
        CHECK(scribe.step() == StageStep{next, 2, 3});
        scribe.apart(kind, 98, Mark::clean);
        CHECK(scribe.step() == StageStep{next, 3, 3});
        scribe.apart(kind, 94, Mark::clean);
        CHECK(scribe.step() == StageStep{next, 0, 3});
        scribe.apart(kind, 96, Mark::clean);
        scribe.apart(kind, 96, Mark::missed);
        CHECK(scribe.step() == StageStep{next, 0, 3});
    }
}

TEST_CASE("two run-throughs in a row that stop nowhere in the passage keep it") {
    Staged scribe(Stage::runThroughs);
    CHECK(scribe.step() == StageStep{Stage::runThroughs, 0, 2});
    scribe.through(true, {{45, 90'000}, {40, 60'000}});
    CHECK(scribe.step().have == 1);
    const Id stopped = scribe.through(true, {{44, 70'000}});
    CHECK(scribe.step().have == 0);
    scribe.add(BackFact{piece, stopped});
    CHECK(scribe.step().have == 1);
    scribe.through(false, {});
    CHECK(scribe.step().have == 0);
    scribe.through(true, {{0, 5}}); // the stop may have been here
    CHECK(scribe.step().have == 0);
    scribe.through(true, {});
    scribe.through(true, {{41 - 1, 1}});
    CHECK(scribe.step() == StageStep{Stage::runThroughs, 2, 2});
}

TEST_CASE("run-throughs are in order, in any order of arrival, and once per id") {
    Staged scribe(Stage::slow);
    const Id first = scribe.through(true, {});
    const Id second = scribe.through(true, {{3, 5}});
    std::vector<Fact> facts = scribe.facts;
    std::reverse(facts.begin(), facts.end());
    facts.push_back(facts.front());
    const Notebook notebook = fold(facts);
    const auto list = notebook.runThroughs(piece);
    REQUIRE(list.size() == 2);
    CHECK(list[0].id == first);
    CHECK(list[1].id == second);
    CHECK(list[1].played.stops == std::vector<Stop>{{3, 5}});
    CHECK(notebook.runThroughs(Id{5, 6}).empty());
    CHECK(notebook.passage(piece) == nullptr);
}

TEST_CASE("the newest note on a run counts, and an empty one removes it") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.add(NoteFact{scribe.passage, run, "Reed too hard"});
    CHECK(scribe.record().notes.at(run) == "Reed too hard");
    const Id second = scribe.add(NoteFact{scribe.passage, run, "New reed"});
    CHECK(scribe.record().notes.at(run) == "New reed");
    scribe.back(second);
    CHECK(scribe.record().notes.at(run) == "Reed too hard");
    scribe.add(NoteFact{scribe.passage, run, ""});
    CHECK(scribe.record().notes.empty());
}
