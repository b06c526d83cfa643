// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/run_through/run_through_control.h"

#include "../drill_fixture.h"

using namespace piolo;
using practice::PedalAct;
using practice::RunThroughControl;
using test::DrillFixture;
using State = RunThroughControl::State;
using Act = PedalAct::Kind;

namespace {

/// A march of 64 bars in 2/4 at 120: a bar a second.
struct MarchFixture : DrillFixture {
    Id piece = addMarch(Tempo::bpm(120), 64);
    RunThroughControl run{*book, sound};

    MarchFixture() { run.open(piece); }

    Id addMarch(std::optional<Tempo> tempo, int bars) {
        PieceFact march{book->newId(), "Tallow Bridge March", {}, {}};
        march.bars = bars;
        march.music = PieceMusic{Meter::parse("2/4", "1/4", "").value(), tempo};
        book->record(march);
        return march.piece;
    }
    [[nodiscard]] std::vector<RunThroughFact> recorded() { return onDisk<RunThroughFact>(); }
};

} // namespace

TEST_CASE_FIXTURE(MarchFixture, "a run-through records its length and its stops, each with the bar it was "
                                "in at the piece's tempo") {
    run.start();
    play(10.5);
    run.markStop();
    play(20.0);
    run.markStop();
    play(9.5);
    run.finish(true);
    CHECK(recorded().empty()); // not before the review
    run.keep();
    const auto facts = recorded();
    REQUIRE(facts.size() == 1);
    CHECK(facts.front() ==
          RunThroughFact{piece, std::nullopt, 40'000, true, {Stop{11, 10'500}, Stop{31, 30'500}}});
}

TEST_CASE_FIXTURE(MarchFixture,
                  "a run-through during which the machine was suspended ends, to be reviewed as given up") {
    run.start();
    play(10.0);
    run.tick();
    CHECK(run.state() == State::playing);
    sound.sleep(3600);
    run.tick();
    CHECK(run.state() == State::review);
    run.keep();
    CHECK(recorded().front() == RunThroughFact{piece, std::nullopt, 10'000, false, {}});
    sound.sleep(60); // while nothing is played
    run.start();
    run.tick();
    CHECK(run.state() == State::playing);
}

TEST_CASE_FIXTURE(MarchFixture, "a bar begins with its first beat, and no bar follows the last") {
    run.start();
    CHECK(run.bar() == 1);
    play(0.99);
    CHECK(run.bar() == 1);
    play(0.01);
    CHECK(run.bar() == 2);
    play(62.0);
    CHECK(run.bar() == 64);
    play(30.0);
    CHECK(run.bar() == 64);
}

TEST_CASE_FIXTURE(MarchFixture, "a piece of unknown length has no last bar up to the most that a piece may "
                                "have") {
    run.open(addMarch(Tempo::bpm(400), 0));
    run.start();
    play(60.0);
    CHECK(run.bar() == 201);
}

TEST_CASE_FIXTURE(MarchFixture, "without the piece's tempo no bar is estimated, and a stop has an unknown "
                                "one") {
    run.open(addMarch(std::nullopt, 64));
    run.start();
    play(5.0);
    CHECK_FALSE(run.bar().has_value());
    run.markStop();
    CHECK(run.stops().front().bar == 0);
    run.finish(true);
    run.keep();
    REQUIRE(recorded().size() == 1);
    CHECK(recorded().front().stops == std::vector{Stop{0, 5'000}});
}

TEST_CASE_FIXTURE(MarchFixture, "the clock runs from the start to the last note, and stays there until the "
                                "review ends") {
    play(3.0);
    CHECK(run.millis() == 0);
    run.start();
    play(2.0);
    CHECK(run.millis() == 2'000);
    run.finish(false);
    play(7.0);
    CHECK(run.millis() == 2'000);
    CHECK_FALSE(run.bar().has_value());
    run.discard();
    CHECK(run.millis() == 0);
    CHECK(recorded().empty());
}

TEST_CASE_FIXTURE(MarchFixture, "one given up is recorded as not finished") {
    run.start();
    run.finish(false);
    run.keep();
    REQUIRE(recorded().size() == 1);
    CHECK_FALSE(recorded().front().finished);
}

TEST_CASE_FIXTURE(MarchFixture, "a correction that is not a bar prevents the recording until it is one") {
    run.start();
    run.markStop();
    run.setBar(0, 7); // not during the music
    CHECK(run.stops().front().bar == 1);
    run.finish(true);
    run.setBar(0, std::nullopt);
    run.setBar(1, 5); // there is no such stop
    CHECK_FALSE(run.allBarsValid());
    run.keep();
    CHECK(run.state() == State::review);
    CHECK(recorded().empty());
    run.setBar(0, 63);
    CHECK(run.allBarsValid());
    run.keep();
    CHECK(run.state() == State::ready);
    REQUIRE(recorded().size() == 1);
    CHECK(recorded().front().stops.front().bar == 63);
}

TEST_CASE_FIXTURE(MarchFixture, "only a piece that is known is played, and no other is opened meanwhile") {
    run.markStop(); // nothing is being played
    CHECK(run.stops().empty());
    run.start();
    run.open({});
    CHECK(run.pieceId() == piece);
    run.finish(true);
    run.open({});
    CHECK(run.pieceId() == piece);
    run.discard();
    run.open(book->newId());
    run.start();
    CHECK(run.state() == State::ready);
    run.open({});
    run.start();
    CHECK(run.state() == State::ready);
}

TEST_CASE_FIXTURE(MarchFixture, "one run-through has no more stops than its fact may list") {
    run.start();
    for (std::size_t stop = 0; stop <= RunThroughFact::mostStops; ++stop) run.markStop();
    CHECK(run.stops().size() == RunThroughFact::mostStops);
}

TEST_CASE_FIXTURE(MarchFixture, "with one pedal a press starts and marks a stop, two take one back, and "
                                "holding it marks the last note") {
    CHECK_FALSE(run.marksAtOnce());
    run.pedal({Act::press, 0, false});
    REQUIRE(run.state() == State::playing);
    CHECK(run.marksAtOnce());
    for (int stop = 0; stop < 3; ++stop) run.pedal({Act::mark, 0, false});
    CHECK(run.stops().size() == 3);
    run.pedal({Act::twice, 0, true}); // the first of the two presses marked the third stop
    CHECK(run.stops().size() == 1);
    run.pedal({Act::mark, 0, false});
    run.pedal({Act::held, 0, true}); // the press that was held marked a stop first
    CHECK(run.state() == State::review);
    CHECK(run.stops().size() == 1);
    CHECK_FALSE(run.marksAtOnce());
    run.pedal({Act::press, 0, false});
    run.pedal({Act::twice, 0, false});
    CHECK(run.state() == State::review);
    CHECK(run.stops().size() == 1);
    run.keep();
    REQUIRE(recorded().size() == 1);
    CHECK(recorded().front().finished);
}

TEST_CASE_FIXTURE(MarchFixture, "a new run-through begins without the stops of the one before") {
    run.start();
    run.markStop();
    run.finish(true);
    run.discard();
    run.start();
    CHECK(run.stops().empty());
    CHECK(run.millis() == 0);
}
