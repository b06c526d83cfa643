// SPDX-License-Identifier: GPL-3.0-or-later
// Taking back, late misses and doubts.
#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

TEST_CASE("back restores tempo and streak") {
    Scribe scribe;
    scribe.clean(4);
    const Id miss = scribe.miss();
    CHECK(scribe.standing() == at(76, 0));
    CHECK(scribe.back() == miss);
    CHECK(scribe.standing() == at(80, 4));
}

TEST_CASE("back again takes back the one before, until nothing is left") {
    Scribe scribe;
    const Id first = scribe.clean();
    const Id set = scribe.tempo(70);
    const Id last = scribe.miss();
    CHECK(scribe.back() == last);
    CHECK(scribe.back() == set);
    CHECK(scribe.back() == first);
    CHECK(scribe.back().isNone());
    CHECK(scribe.standing() == at(80, 0));
    CHECK(scribe.record().entries.empty());
}

TEST_CASE("every mark can be taken back, also one that changed nothing") {
    Scribe scribe;
    scribe.tempo(40);
    const Id changedNothing = scribe.miss();
    CHECK(scribe.record().entries.back().after == scribe.record().entries.back().before);
    CHECK(scribe.back() == changedNothing);
    const Id attempt = scribe.tryOnce(96, Mark::clean);
    CHECK(scribe.back() == attempt);
}

TEST_CASE("a void run is not a mark and cannot be taken back") {
    Scribe scribe;
    const Id clean = scribe.clean();
    scribe.run(80, Mark::voided);
    CHECK(scribe.back() == clean);
    CHECK(scribe.back().isNone());
}

TEST_CASE("the tempo of a new day can be taken back like a hand-set one") {
    Scribe scribe;
    scribe.clean();
    scribe.turnTo("2026-03-02");
    const Id opening = scribe.tempo(76, Reason::newDay);
    CHECK(scribe.back() == opening);
    CHECK(scribe.standing() == at(80, 1));
}

TEST_CASE("back takes back only what this device marked, in this passage") {
    Scribe scribe;
    const Id mine = scribe.clean();
    scribe.device = "pit";
    const Id theirs = scribe.clean();
    const Notebook notebook = scribe.notebook();
    CHECK(notebook.backTarget(scribe.passage, "stand") == mine);
    CHECK(notebook.backTarget(scribe.passage, "pit") == theirs);
    CHECK(notebook.backTarget(scribe.passage, "loft").isNone());
    CHECK(notebook.backTarget(Id{8, 8}, "stand").isNone());
}

TEST_CASE("an edit is not a mark") {
    Scribe scribe;
    CHECK(scribe.notebook().backTarget(scribe.passage, "stand").isNone());
}

TEST_CASE("taking back the run that climbed takes back the climb and the full streak") {
    Scribe scribe;
    scribe.clean(5);
    scribe.back();
    CHECK(scribe.standing() == at(80, 4));
    CHECK_FALSE(scribe.record().best);
}

TEST_CASE("a back that arrives before what it names still retracts it") {
    Scribe scribe;
    scribe.clean(4);
    scribe.back(scribe.miss());
    std::swap(scribe.facts.front(), scribe.facts.back());
    CHECK(scribe.standing() == at(80, 4));
}

TEST_CASE("a back that names a back has no effect") {
    Scribe scribe;
    const Id miss = scribe.miss();
    scribe.back(miss);
    scribe.back(scribe.facts.back().id);
    CHECK(scribe.standing() == at(80, 0));
}

TEST_CASE("a back in another passage has no effect") {
    Scribe scribe;
    const Id miss = scribe.miss();
    scribe.add(BackFact{Id{8, 8}, miss});
    CHECK(scribe.standing() == at(76, 0));
}

TEST_CASE("a late miss puts the run back and counts it as missed: 84 with 4 of 5 goes to 80, not to 82") {
    Scribe scribe;
    scribe.tempo(84);
    scribe.clean(4);
    const Id run = scribe.clean();
    CHECK(scribe.standing() == at(86, 0));
    scribe.late(run);
    CHECK(scribe.standing() == at(80, 0));
    const PassageRecord record = scribe.record();
    CHECK(record.entries.back().id == run);
    CHECK(record.entries.back().mark == Mark::missed);
    CHECK(record.entries.back().late);
    CHECK_FALSE(record.entries.back().fullStreak);
}

TEST_CASE("one back makes a late-missed run clean again, a second removes it") {
    Scribe scribe;
    scribe.tempo(84);
    scribe.clean(4);
    const Id run = scribe.clean();
    const Id late = scribe.late(run);
    CHECK(scribe.back() == late);
    CHECK(scribe.standing() == at(86, 0));
    CHECK(scribe.back() == run);
    CHECK(scribe.standing() == at(84, 4));
}

TEST_CASE("a late miss counts at the run's own place, and later runs are folded again") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.clean(3);
    scribe.late(run);
    // The first run drops to 76. The next was played at 80, so it sets the tempo to 80 and counts.
    CHECK(scribe.record().entries[0].after == at(76, 0));
    CHECK(scribe.standing() == at(80, 3));
}

TEST_CASE("a late miss changes nothing about a missed or void run") {
    Scribe scribe;
    const Id missed = scribe.miss();
    const Id voided = scribe.here(Mark::voided);
    scribe.late(missed);
    scribe.late(voided);
    const PassageRecord record = scribe.record();
    CHECK(record.standing == at(76, 0));
    CHECK(record.entries[0].mark == Mark::missed);
    CHECK_FALSE(record.entries[0].late);
    CHECK(record.entries[1].mark == Mark::voided);
}

TEST_CASE("a late miss of a try makes it missed and does not change the standing") {
    Scribe scribe;
    scribe.clean(2);
    scribe.late(scribe.tryOnce(96, Mark::clean));
    CHECK(scribe.record().entries.back().mark == Mark::missed);
    CHECK(scribe.standing() == at(80, 2));
}

TEST_CASE("doubted runs are void and their climbs are taken back; one back brings them all back") {
    Scribe scribe;
    std::vector<Id> runs;
    for (int run = 0; run < 10; ++run) runs.push_back(scribe.clean());
    CHECK(scribe.standing() == at(84, 0));
    const Id doubt = scribe.doubt(runs);
    CHECK(scribe.standing() == at(80, 0));
    CHECK(scribe.record().entries.size() == 10);
    CHECK(scribe.record().entries.front().mark == Mark::voided);
    CHECK_FALSE(scribe.record().best);
    CHECK(scribe.back() == doubt);
    CHECK(scribe.standing() == at(84, 0));
}

TEST_CASE("a doubt is stronger than a late miss") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.late(run);
    scribe.doubt({run});
    CHECK(scribe.record().entries.back().mark == Mark::voided);
    CHECK_FALSE(scribe.record().entries.back().late);
    CHECK(scribe.standing() == at(80, 0));
}

TEST_CASE("an edit or a definition that is taken back has no effect") {
    Scribe scribe;
    scribe.clean();
    Tempi tempi = usualTempi();
    tempi.rule.target = Tempo::bpm(70);
    tempi.start = Tempo::bpm(60);
    const Id edit = scribe.edit(tempi);
    CHECK(scribe.standing() == at(70, 0));
    scribe.back(edit);
    CHECK(scribe.standing() == at(80, 1));
    scribe.back(scribe.facts.front().id);
    CHECK(scribe.notebook().passage(scribe.passage) == nullptr);
}
