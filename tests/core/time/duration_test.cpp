// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/duration.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

Music fourBars() {
    Music music;
    music.landing = false;
    return music;
}

} // namespace

TEST_CASE("a run is its pick-up, its bars and the landing beat") {
    Music music = fourBars();
    CHECK(runMillis(music, Tempo::bpm(60)) == 16'000);
    music.landing = true;
    CHECK(runMillis(music, Tempo::bpm(60)) == 17'000);
    music.pickup = {1, 8};
    CHECK(runMillis(music, Tempo::bpm(60)) == 17'500);
    CHECK(runMillis(music, Tempo::bpm(120)) == 8'750);
}

TEST_CASE("a length is rounded to the nearest millisecond") {
    Music music = fourBars();
    music.bars = 1;
    CHECK(runMillis(music, Tempo::bpm(70)) == 3'429);  // 3428.57
    CHECK(runMillis(music, Tempo::bpm(110)) == 2'182); // 2181.82
    CHECK(runMillis(music, Tempo::bpm(130)) == 1'846); // 1846.15
}

TEST_CASE("the tempo counts the passage's own beat unit") {
    Music music = fourBars();
    music.meter = *Meter::parse("6/8", "3/8", "");
    CHECK(runMillis(music, Tempo::bpm(60)) == 8'000);
    music.meter = *Meter::parse("6/8", "1/8", "");
    CHECK(runMillis(music, Tempo::bpm(60)) == 24'000);
}

TEST_CASE(
    "a cycle is count-in, run and breath; before a pick-up, the count-in includes the rest of its bar") {
    Music music = fourBars();
    CHECK(cycleMillis(music, Tempo::bpm(60)) == 4'000 + 16'000 + 2'000);
    music.pickup = {1, 4};
    CHECK(cycleMillis(music, Tempo::bpm(60)) == 4'000 + 3'000 + 1'000 + 16'000 + 2'000);
    music.countInBars = 0;
    music.breathBeats = 0;
    music.pickup = {};
    CHECK(cycleMillis(music, Tempo::bpm(60)) == runMillis(music, Tempo::bpm(60)));
}

TEST_CASE("an open-ended passage has no length") {
    Music music;
    music.bars = 0;
    CHECK(runMillis(music, Tempo::bpm(60)) == 0);
    CHECK(cycleMillis(music, Tempo::bpm(60)) == 0);
    CHECK(millisToTarget(music, Rule{}, Standing{}) == 0);
}

TEST_CASE("the time to the target is that of all cycles until a full streak there") {
    const Music music = fourBars(); // 22 beats per cycle
    Rule rule;
    rule.cleanRuns = 2;
    rule.climb = 60;
    rule.target = Tempo::bpm(120);
    CHECK(millisToTarget(music, rule, {Tempo::bpm(60), 0}) == 2 * 22'000 + 2 * 11'000);
    CHECK(millisToTarget(music, rule, {Tempo::bpm(60), 1}) == 22'000 + 2 * 11'000);
    CHECK(millisToTarget(music, rule, {Tempo::bpm(120), 1}) == 11'000);
    rule.target = Tempo::bpm(40);
    CHECK(millisToTarget(music, rule, {Tempo::bpm(120), 0}) == 2 * 11'000);
}

TEST_CASE("fewer clean runs are suggested for long runs: 5 up to 20 s, 3 up to 40 s, none beyond") {
    CHECK(proposedCleanRuns(20'000) == 5);
    CHECK(proposedCleanRuns(20'001) == 3);
    CHECK(proposedCleanRuns(40'000) == 3);
    CHECK(proposedCleanRuns(40'001) == 0);
}
