// SPDX-License-Identifier: GPL-3.0-or-later
// A full queue between threads is reported, and no mark is lost.
#include "../drill_fixture.h"

using namespace piolo;
using piolo::test::DrillFixture;
using Kind = engine::Event::Kind;

namespace {

/// How often it was reported that the computer fell behind.
void count(DrillFixture& fixture, int& reported) {
    QObject::connect(fixture.session.get(), &practice::DrillSession::fellBehind, [&reported] { ++reported; });
}

} // namespace

TEST_CASE("a miss that finds the engine's queue full waits, keeps its moment, and is reported") {
    DrillFixture fixture;
    int reported = 0;
    count(fixture, reported);
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(0.1 + 60.0 / 84 * 5.5); // heard 100 ms late: the middle of the sixth beat
    for (int move = 0; move < 300; ++move) fixture.session->setMix({});
    fixture.press();
    CHECK(fixture.session->keysThatWaited() == 46); // the queue holds 255
    CHECK(reported == 1);
    fixture.play(0.05);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().mark == Mark::missed);
    REQUIRE(runs.front().spots.size() == 1);
    CHECK(test::isInTheMiddleOf(runs.front().spots.front(), 42, 2));
}

TEST_CASE("a reader who was held up for twenty minutes still journals every run, and this is reported") {
    DrillFixture fixture;
    int reported = 0;
    count(fixture, reported);
    PracticeSettings settings;
    settings.pauseAfterRuns = 0;
    fixture.book->record(SettingsFact{settings});
    fixture.press();
    for (int block = 0; block < 120'000; ++block) fixture.sound.render();
    fixture.play(1);
    CHECK(fixture.session->pulsesLeftOut() > 1'000);
    CHECK(reported == 1);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() > 60);
    for (const auto& run : runs) CHECK(run.mark == Mark::clean);
    std::uint64_t ended = 0;
    for (const auto& note : fixture.notes)
        if (note.event.kind == Kind::runEnded) CHECK(note.event.run == ++ended);
    CHECK(ended == runs.size());
}
