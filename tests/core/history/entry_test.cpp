// SPDX-License-Identifier: GPL-3.0-or-later
// Laws of entries: what a passage's record says about each event.
#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

TEST_CASE(
    "the entry of a run has what its fact has: when, how fast, why, how long, and where it went wrong") {
    Scribe scribe;
    RunFact run;
    run.passage = scribe.passage;
    run.tempo = Tempo::bpm(72);
    run.mark = Mark::voided;
    run.reason = Reason::stopped;
    run.millis = 4'321;
    run.spots = {{3, 1}, {5, 0}};
    const Id id = scribe.add(run);
    const PassageRecord record = scribe.record();
    REQUIRE(record.entries.size() == 1);
    const Entry& entry = record.entries.front();
    CHECK(entry.id == id);
    CHECK(entry.at == scribe.facts.back().at);
    CHECK(entry.kind == Entry::Kind::run);
    CHECK(entry.tempo == run.tempo);
    CHECK(entry.mark == Mark::voided);
    CHECK(entry.reason == Reason::stopped);
    CHECK(entry.millis == 4'321);
    CHECK(entry.spots == run.spots);
}

TEST_CASE("the entry of a tempo change has its time, tempo and reason, and the standing before and after") {
    Scribe scribe;
    scribe.clean(2);
    const Id id = scribe.tempo(66, Reason::newDay);
    const Entry entry = scribe.record().entries.back();
    CHECK(entry.id == id);
    CHECK(entry.at == scribe.facts.back().at);
    CHECK(entry.kind == Entry::Kind::tempo);
    CHECK(entry.tempo == Tempo::bpm(66));
    CHECK(entry.reason == Reason::newDay);
    CHECK(entry.before == at(80, 2));
    CHECK(entry.after == at(66, 0));
}

TEST_CASE("the entry of a run has the standing before and after, and whether the streak was full") {
    Scribe scribe;
    scribe.clean(5);
    const std::vector<Entry> entries = scribe.record().entries;
    CHECK(entries[0].before == at(80, 0));
    CHECK(entries[0].after == at(80, 1));
    CHECK_FALSE(entries[3].fullStreak);
    CHECK(entries[4].fullStreak);
    CHECK(entries[4].after == at(82, 0));
}

TEST_CASE("only a clean run named by a late miss is late") {
    Scribe scribe;
    const Id clean = scribe.clean();
    const Id missed = scribe.miss();
    const Id other = scribe.clean();
    scribe.late(clean);
    scribe.late(missed);
    const std::vector<Entry> entries = scribe.record().entries;
    CHECK(entries[0].late);
    CHECK(entries[0].mark == Mark::missed);
    CHECK_FALSE(entries[1].late);
    CHECK(entries[1].mark == Mark::missed);
    CHECK(entries[2].id == other);
    CHECK_FALSE(entries[2].late);
    CHECK(entries[2].mark == Mark::clean);
}

TEST_CASE("a record contains its passage as of the newest edits") {
    Scribe scribe;
    Music music;
    music.bars = 19;
    scribe.add(PassageFact{scribe.passage, Title{"Coda", {}}, {}, {}});
    scribe.add(PassageFact{scribe.passage, {}, music, {}});
    const PassageRecord record = scribe.record();
    CHECK(record.passage.id == scribe.passage);
    CHECK(record.passage.title.name == "Coda");
    CHECK(record.passage.music == music);
    CHECK(record.passage.tempi == usualTempi());
}

TEST_CASE("a tempo set on a new date begins that date and resets the streak") {
    Scribe scribe;
    scribe.clean(2);
    scribe.turnTo("2026-03-02");
    scribe.tempo(72);
    const PassageRecord record = scribe.record();
    CHECK(record.lastDay == day("2026-03-02"));
    CHECK(record.entries.back().before == at(80, 0));
}

TEST_CASE("a group counts as edited here if an edit by hand follows an import of that same group") {
    const Title title{"Coda", {}};
    const PassageFact groups[] = {{Id{7, 7}, title, {}, {}},
                                  {Id{7, 7}, {}, Music{}, {}},
                                  {Id{7, 7}, {}, {}, usualTempi()},
                                  {Id{7, 7}, {}, {}, {}, ClickPattern{}},
                                  {Id{7, 7}, {}, {}, {}, {}, Manner{}},
                                  {Id{7, 7}, {}, {}, {}, {}, {}, std::vector<Note>{}}};
    const GroupMarks marks[] = {{true},
                                {false, true},
                                {false, false, true},
                                {false, false, false, true},
                                {false, false, false, false, true},
                                {false, false, false, false, false, true}};
    for (std::size_t group = 0; group < 6; ++group) {
        CAPTURE(group);
        Scribe scribe;
        scribe.add(groups[group]);
        CHECK_FALSE(scribe.record().editedHere.any()); // never imported
        PassageFact whole{scribe.passage,      title,   Music{}, usualTempi(), ClickPattern{}, Manner{},
                          std::vector<Note>{}, Scale{}, true};
        scribe.add(whole);
        CHECK_FALSE(scribe.record().editedHere.any());
        scribe.add(groups[group]);
        CHECK(scribe.record().editedHere == marks[group]);
        scribe.add(whole);
        CHECK_FALSE(scribe.record().editedHere.any());
    }
}
