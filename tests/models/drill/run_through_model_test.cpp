// SPDX-License-Identifier: GPL-3.0-or-later
#include "../practice_fixture.h"
#include "models/drill/run_through_model.h"

using namespace piolo;
using models::RunThroughModel;
using test::PracticeFixture;

namespace {

/// A march of 64 bars in 2/4 at 120: a bar a second.
struct Rehearsal {
    PracticeFixture fixture;
    Id piece = fixture.book->newId();
    practice::RunThroughControl control{*fixture.book, fixture.sound};
    RunThroughModel run{*fixture.book, control};

    Rehearsal() {
        PieceFact march{piece, "Tallow Bridge March", {}, {}};
        march.bars = 64;
        march.music = PieceMusic{Meter::parse("2/4", "1/4", "").value(), Tempo::bpm(120)};
        fixture.book->record(march);
        run.open(QString::fromStdString(piece.text()));
    }
};

} // namespace

TEST_CASE("a run-through keeps its length and its stops, with the bar estimated by the clock") {
    Rehearsal rehearsal;
    RunThroughModel& run = rehearsal.run;
    CHECK(run.title() == "Tallow Bridge March");
    run.start();
    rehearsal.fixture.play(10.5);
    CHECK(run.clock() == "0:10");
    CHECK(run.place() == "about bar 11");
    run.markStop();
    rehearsal.fixture.play(80);
    run.markStop(); // longer than the piece: it has no more bars
    run.finish(true);
    CHECK(run.state() == RunThroughModel::State::Review);
    CHECK(run.stops().size() == 2);
    run.setBar(1, "63");
    run.keep();
    CHECK(run.state() == RunThroughModel::State::Ready);
    const auto kept = rehearsal.fixture.onDisk<RunThroughFact>();
    REQUIRE(kept.size() == 1);
    CHECK(kept.front().finished);
    CHECK(kept.front().millis / 1000 == 90);
    REQUIRE(kept.front().stops.size() == 2);
    CHECK(kept.front().stops[0].bar == 11);
    CHECK(kept.front().stops[1].bar == 63);
    REQUIRE(run.past().size() == 1);
    CHECK(run.past().front().toMap()["length"] == "1:30");
    CHECK(run.past().front().toMap()["stops"] == "2 stops");
}

TEST_CASE("an invalid bar prevents a run-through from being recorded; an unknown one does not") {
    Rehearsal rehearsal;
    RunThroughModel& run = rehearsal.run;
    run.start();
    run.markStop();
    run.finish(false);
    run.setBar(0, "letter C");
    CHECK(run.fault() != "");
    run.keep();
    CHECK(rehearsal.fixture.onDisk<RunThroughFact>().empty());
    run.setBar(0, "");
    CHECK(run.fault() == "");
    run.keep();
    const auto kept = rehearsal.fixture.onDisk<RunThroughFact>();
    REQUIRE(kept.size() == 1);
    CHECK_FALSE(kept.front().finished);
    CHECK(kept.front().stops.front().bar == 0);
}

TEST_CASE("a discarded run-through is not recorded, and no other piece is shown meanwhile") {
    Rehearsal rehearsal;
    RunThroughModel& run = rehearsal.run;
    run.markStop(); // nothing has been played yet
    CHECK(run.stops().isEmpty());
    run.start();
    run.open("");
    CHECK(run.isOpen());
    run.finish(true);
    run.discard();
    CHECK(rehearsal.fixture.onDisk<RunThroughFact>().empty());
    CHECK(run.clock() == "0:00");
    run.open("");
    CHECK_FALSE(run.isOpen());
    run.start();
    CHECK(run.state() == RunThroughModel::State::Ready);
}

TEST_CASE("a run-through with one pedal: a press starts and marks a stop, two take one back, holding marks "
          "the last note") {
    using practice::PedalAct;
    using Act = practice::PedalAct::Kind;
    Rehearsal rehearsal;
    RunThroughModel& run = rehearsal.run;
    rehearsal.control.pedal({Act::press, 0, false});
    CHECK(run.state() == RunThroughModel::State::Playing);
    for (const double seconds : {5.0, 5.0, 5.0}) {
        rehearsal.fixture.play(seconds);
        rehearsal.control.pedal({Act::mark, 0, false});
    }
    CHECK(run.counted() == "3 stops");
    rehearsal.control.pedal({Act::twice, 0, true}); // the first of two presses was the third stop
    CHECK(run.counted() == "1 stop");
    rehearsal.control.pedal({Act::mark, 0, false});
    rehearsal.control.pedal({Act::held, 0, true});
    CHECK(run.state() == RunThroughModel::State::Review);
    CHECK(run.counted() == "1 stop");
    rehearsal.control.pedal({Act::press, 0, false});
    rehearsal.control.pedal({Act::twice, 0, false});
    CHECK(run.state() == RunThroughModel::State::Review);
}

TEST_CASE("a stop is taken back while the music continues; with none left, nothing is") {
    Rehearsal rehearsal;
    RunThroughModel& run = rehearsal.run;
    run.start();
    run.markStop();
    run.takeBackStop();
    run.takeBackStop();
    CHECK(run.counted() == "no stop");
    CHECK(run.state() == RunThroughModel::State::Playing);
}
