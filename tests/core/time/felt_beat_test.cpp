// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/felt_beat.h"

#include "../scribe.h"
#include "core/time/metronome_scale.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

Passage usual() {
    Passage passage;
    passage.tempi = usualTempi();
    return passage;
}

std::string obstacle(const Passage& passage, Tempo present, BeatUnit beat) {
    const auto felt = feltIn(passage, present, beat);
    return felt ? "none" : felt.fault().arguments.at(0);
}

} // namespace

TEST_CASE("quarter = 60 and eighth = 120 are one speed: tempo, target, floor and steps double") {
    const auto felt = feltIn(usual(), Tempo::bpm(60), BeatUnit::eighth);
    REQUIRE(felt);
    CHECK(felt->tempo == Tempo::bpm(120));
    const Tempi& tempi = felt->passage.tempi;
    CHECK(tempi.start == Tempo::bpm(160));
    CHECK(tempi.rule.target == Tempo::bpm(192));
    CHECK(tempi.rule.floor == Tempo::bpm(80));
    CHECK(tempi.rule.drop == 8);
    CHECK(tempi.rule.climb == 4);
    CHECK(felt->passage.music.meter.beatsPerBar() == 8);
    CHECK(felt->passage.music.breathBeats == 4);
}

TEST_CASE("there and back is where it began") {
    Passage sixteenths = usual();
    sixteenths.music.subdivision = 4;
    const auto there = feltIn(sixteenths, *Tempo::parse("72.125"), BeatUnit::eighth);
    REQUIRE(there);
    CHECK(there->passage.music.subdivision == 2);
    const auto back = feltIn(there->passage, there->tempo, BeatUnit::quarter);
    REQUIRE(back);
    CHECK(back->passage == sixteenths);
    CHECK(back->tempo == *Tempo::parse("72.125"));
}

TEST_CASE("from the dotted quarter to the eighth everything is three times as fast") {
    Passage jig = usual();
    jig.music.meter = Meter::parse("6/8", "", "").value();
    jig.music.subdivision = 3;
    const auto felt = feltIn(jig, Tempo::bpm(50), BeatUnit::eighth);
    REQUIRE(felt);
    CHECK(felt->tempo == Tempo::bpm(150));
    CHECK(felt->passage.music.subdivision == 1);
    CHECK(felt->passage.music.meter.groups() == std::vector<int>{3, 3});
    CHECK(felt->passage.tempi.rule.drop == 12);
}

TEST_CASE("what cannot be converted exactly is named as the obstacle") {
    const Tempo sixty = Tempo::bpm(60);
    Passage passage = usual();
    CHECK(obstacle(passage, Tempo::bpm(210), BeatUnit::eighth) == "tempo");
    CHECK(obstacle(passage, *Tempo::parse("60.001"), BeatUnit::half) == "tempo");
    CHECK(obstacle(passage, sixty, BeatUnit::dottedHalf) == "meter");
    passage.music.subdivision = 3;
    CHECK(obstacle(passage, sixty, BeatUnit::eighth) == "subdivision");
    passage = usual();
    passage.tempi.rule.drop = 3;
    CHECK(obstacle(passage, sixty, BeatUnit::half) == "drop");
    passage = usual();
    passage.tempi.rule.target = Tempo::bpm(201);
    CHECK(obstacle(passage, sixty, BeatUnit::eighth) == "target");
    passage = usual();
    passage.click.accents = {Accent::strong};
    CHECK(obstacle(passage, sixty, BeatUnit::eighth) == "accents");
    passage = usual();
    passage.click.on = ClickOn::offbeats;
    CHECK(obstacle(passage, sixty, BeatUnit::eighth) == "on");
    passage = usual();
    passage.click.breaths = {{3, 1, 5}};
    CHECK(obstacle(passage, sixty, BeatUnit::eighth) == "breaths");
}

TEST_CASE("breath places keep their time and their length") {
    Passage passage = usual();
    passage.click.breaths = {{3, 3, 2}};
    passage.click.breathBelow = Tempo::bpm(84);
    const auto felt = feltIn(passage, Tempo::bpm(60), BeatUnit::eighth);
    REQUIRE(felt);
    CHECK(felt->passage.click.breaths.front() == BreathPlace{3, 5, 4});
    CHECK(felt->passage.click.breathBelow == Tempo::bpm(168));
}

// The metronome marks 40 to 104, doubled, are the marks 80 to 208: published list, docs/rule.md.
TEST_CASE("in notches the rungs from 40 to 104 are the rungs from 80 to 208, felt in eighths") {
    Passage passage = usual();
    passage.tempi.rule.step = StepKind::notches;
    passage.tempi.rule.target = Tempo::bpm(104);
    const auto felt = feltIn(passage, Tempo::bpm(66), BeatUnit::eighth);
    REQUIRE(felt);
    CHECK(felt->passage.tempi.rule.drop == passage.tempi.rule.drop);
    CHECK(felt->passage.tempi.rule.target == Tempo::bpm(208));
    passage.tempi.rule.floor = Tempo::bpm(30);
    CHECK(obstacle(passage, Tempo::bpm(66), BeatUnit::eighth) == "step");
}

TEST_CASE("a felt beat keeps the streak and converts what was played, misses' places included") {
    Scribe scribe;
    scribe.clean(3);
    scribe.add(RunFact{
        scribe.passage, Tempo::bpm(80), Mark::missed, Reason::none, RunKind::aside, 1, {{2, 3, 500}}});
    scribe.feel(BeatUnit::eighth);
    const PassageRecord record = scribe.record();
    CHECK(record.standing == at(160, 3));
    CHECK(record.entries.front().tempo == Tempo::bpm(160));
    CHECK(record.entries.front().before == at(160, 0));
    CHECK(record.entries.back().spots.front() == Spot{2, 6, 0});
    scribe.clean(2);
    CHECK(scribe.standing() == at(164, 0));
    CHECK(scribe.record().best == Tempo::bpm(160));
    CHECK(scribe.record().bests.front() == Tempo::bpm(160));
    CHECK(scribe.record().lastFullStreak == Tempo::bpm(160));
    scribe.feel(BeatUnit::quarter);
    CHECK(scribe.standing() == at(82, 0));
    CHECK(scribe.record().best == Tempo::bpm(80));
    CHECK(scribe.record().bests.front() == Tempo::bpm(80));
}

TEST_CASE("an impossible felt beat changes nothing") {
    Scribe scribe;
    scribe.clean(3);
    const Passage before = scribe.record().passage;
    scribe.feel(BeatUnit::dottedHalf);
    CHECK(scribe.record().passage == before);
    CHECK(scribe.standing() == at(80, 3));
}
