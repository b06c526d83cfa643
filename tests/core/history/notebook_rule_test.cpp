// SPDX-License-Identifier: GPL-3.0-or-later
// The rule as the notebook applies it to recorded runs.
#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

TEST_CASE("a new passage is at its start") { CHECK(Scribe().standing() == at(80, 0)); }

TEST_CASE("five clean runs climb, a miss drops") {
    Scribe scribe;
    scribe.clean(5);
    CHECK(scribe.standing() == at(82, 0));
    scribe.clean(4);
    scribe.miss();
    CHECK(scribe.standing() == at(78, 0));
}

TEST_CASE("a void run is logged and moves nothing") {
    Scribe scribe;
    scribe.clean(3);
    const Id voided = scribe.run(90, Mark::voided);
    const PassageRecord record = scribe.record();
    CHECK(record.standing == at(80, 3));
    CHECK(record.entries.back().id == voided);
    CHECK(record.entries.back().after == at(80, 3));
}

TEST_CASE("runs without the click, in their context and aside are logged apart and move nothing") {
    Scribe scribe;
    scribe.clean(4);
    scribe.apart(RunKind::silent, 80, Mark::missed);
    scribe.apart(RunKind::context, 80, Mark::clean);
    scribe.apart(RunKind::aside, 40, Mark::clean);
    const PassageRecord record = scribe.record();
    CHECK(record.standing == at(80, 4));
    CHECK_FALSE(record.best.has_value());
    REQUIRE(record.entries.size() == 7);
    CHECK(record.entries[4].kind == Entry::Kind::silent);
    CHECK(record.entries[4].mark == Mark::missed);
    CHECK(record.entries[5].kind == Entry::Kind::context);
    CHECK(record.entries[6].kind == Entry::Kind::aside);
}

TEST_CASE("a try is logged apart and leaves tempo and streak alone") {
    Scribe scribe;
    scribe.clean(4);
    scribe.tryOnce(96, Mark::clean);
    scribe.tryOnce(96, Mark::missed);
    const PassageRecord record = scribe.record();
    CHECK(record.standing == at(80, 4));
    CHECK(record.entries.back().kind == Entry::Kind::attempt);
    CHECK(record.entries.back().mark == Mark::missed);
}

TEST_CASE("tries are never a full streak") {
    Scribe scribe;
    for (int time = 0; time < 10; ++time) scribe.tryOnce(96, Mark::clean);
    CHECK_FALSE(scribe.record().best);
    CHECK(scribe.record().secures.empty());
}

TEST_CASE("a hand-set tempo starts the streak at 0") {
    Scribe scribe;
    scribe.clean(4);
    scribe.tempo(70);
    CHECK(scribe.standing() == at(70, 0));
}

TEST_CASE("a run recorded at another tempo sets that tempo with streak 0, then counts") {
    Scribe scribe;
    scribe.clean(4);
    scribe.run(90, Mark::clean);
    CHECK(scribe.standing() == at(90, 1));
}

TEST_CASE("best is the highest tempo with a full streak, the last full streak the newest") {
    Scribe scribe;
    scribe.clean(10);
    CHECK(scribe.record().best == Tempo::bpm(82));
    scribe.tempo(70);
    scribe.clean(5);
    CHECK(scribe.record().best == Tempo::bpm(82));
    CHECK(scribe.record().lastFullStreak == Tempo::bpm(70));
}

TEST_CASE("a full streak at the target is a secure, and misses never undo it") {
    Scribe scribe;
    scribe.tempo(96);
    scribe.clean(5);
    scribe.miss();
    scribe.miss();
    const PassageRecord record = scribe.record();
    REQUIRE(record.secures.size() == 1);
    CHECK(record.secures[0].tempo == Tempo::bpm(96));
    CHECK(record.secures[0].day == day("2026-03-01"));
    CHECK(record.standing == at(88, 0));
}

TEST_CASE("secures of one day count as one day") {
    Scribe scribe;
    scribe.tempo(96);
    scribe.clean(10);
    CHECK(scribe.record().secures.size() == 2);
    CHECK(scribe.record().secureDays() == 1);
    scribe.turnTo("2026-03-02");
    scribe.clean(5);
    CHECK(scribe.record().secureDays() == 2);
}

TEST_CASE("raising the target discards the secures below it, and only at its place in the order") {
    Scribe scribe;
    scribe.tempo(96);
    scribe.clean(5);
    scribe.tempo(104);
    scribe.clean(5);
    Tempi tempi = usualTempi();
    tempi.rule.target = Tempo::bpm(100);
    scribe.edit(tempi);
    REQUIRE(scribe.record().secures.size() == 1);
    CHECK(scribe.record().secures[0].tempo == Tempo::bpm(104));
    scribe.edit(usualTempi());
    CHECK(scribe.record().secures.size() == 1);
    scribe.tempo(96);
    scribe.clean(5);
    CHECK(scribe.record().secures.size() == 2);
}

TEST_CASE("an edited passage never recomputes the past") {
    Scribe scribe;
    scribe.clean(5);
    Tempi tempi = usualTempi();
    tempi.rule.cleanRuns = 2;
    tempi.rule.climb = 5;
    scribe.edit(tempi);
    CHECK(scribe.standing() == at(82, 0));
    scribe.clean(2);
    CHECK(scribe.standing() == at(87, 0));
}

TEST_CASE("an edit clamps the tempo into floor and target, with streak 0 only if that moved it") {
    Scribe scribe;
    scribe.clean(3);
    Tempi tempi = usualTempi();
    tempi.rule.drop = 6;
    scribe.edit(tempi);
    CHECK(scribe.standing() == at(80, 3));
    tempi.rule.target = Tempo::bpm(78);
    tempi.start = Tempo::bpm(60);
    scribe.edit(tempi);
    CHECK(scribe.standing() == at(78, 0));
    tempi = usualTempi();
    tempi.rule.floor = Tempo::bpm(84);
    tempi.start = Tempo::bpm(84);
    scribe.edit(tempi);
    CHECK(scribe.standing() == at(84, 0));
}

TEST_CASE("an edited start moves the standing as long as no run counted and no tempo was set") {
    Scribe scribe;
    scribe.run(80, Mark::voided);
    scribe.tryOnce(96, Mark::missed);
    Tempi tempi = usualTempi();
    tempi.start = Tempo::bpm(66);
    scribe.edit(tempi);
    CHECK(scribe.standing() == at(66, 0));
    scribe.clean();
    scribe.edit(usualTempi());
    CHECK(scribe.standing() == at(66, 1));
}

TEST_CASE("a renamed passage keeps its streak, also above the target") {
    Scribe scribe;
    scribe.tempo(120);
    scribe.clean(2);
    scribe.add(PassageFact{scribe.passage, Title{"Coda", {}}, {}, {}});
    CHECK(scribe.standing() == at(120, 2));
    CHECK(scribe.record().passage.title.name == "Coda");
    CHECK(scribe.record().passage.tempi == usualTempi());
}

TEST_CASE("a new local date starts the streak at 0") {
    Scribe scribe;
    scribe.clean(4);
    scribe.turnTo("2026-03-02");
    scribe.clean();
    CHECK(scribe.standing() == at(80, 1));
    CHECK(scribe.record().entries.back().before == at(80, 0));
    CHECK(scribe.record().lastDay == day("2026-03-02"));
}

TEST_CASE("the date that counts is the one recorded with the fact, not that of UTC") {
    Scribe scribe;
    scribe.clean(3);
    scribe.clean();
    // 12:00 UTC is already the next date at an offset of fourteen hours.
    scribe.facts.back().at.offsetMinutes = 14 * 60;
    CHECK(scribe.standing() == at(80, 1));
}

TEST_CASE("a void run on a new date starts the day all the same") {
    Scribe scribe;
    scribe.clean(4);
    scribe.turnTo("2026-03-02");
    scribe.run(80, Mark::voided);
    CHECK(scribe.standing() == at(80, 0));
    scribe.clean();
    CHECK(scribe.standing() == at(80, 1));
}

TEST_CASE("runs before the first tempi are folded with those") {
    Scribe scribe;
    scribe.clean(5);
    scribe.facts.front().order = 1'000'000;
    CHECK(scribe.standing() == at(82, 0));
}
