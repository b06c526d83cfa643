// SPDX-License-Identifier: GPL-3.0-or-later
// What was taken back at the drill is known, and is put back in its own place.
#include "../drill_fixture.h"

using namespace piolo;
using engine::Event;
using practice::DrillControl;
using practice::TakenBack;
using test::DrillFixture;

namespace {

constexpr auto ended = Event::Kind::runEnded;

void stopAfter(DrillFixture& fixture) {
    fixture.control->stop();
    fixture.play(0.5);
    REQUIRE(fixture.control->state() == DrillControl::State::stopped);
}

} // namespace

TEST_CASE("what was taken back is known, and is put back one after the other") {
    DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(ended));
    REQUIRE(fixture.playUntil(Event::Kind::runBegan));
    fixture.play(3.5);
    fixture.press();
    fixture.play(0.5);
    stopAfter(fixture);
    const PassageRecord before = fixture.record();
    REQUIRE(fixture.control->takenBack() == nullptr);

    fixture.control->takeBack();
    const TakenBack* taken = fixture.control->takenBack();
    REQUIRE(taken != nullptr);
    CHECK(taken->what == TakenBack::What::run);
    CHECK(taken->mark == Mark::missed);
    CHECK(taken->tempo == Tempo::bpm(84));
    REQUIRE(taken->spot);
    CHECK(taken->spot->bar == 42);
    fixture.control->takeBack();
    taken = fixture.control->takenBack();
    CHECK(taken->mark == Mark::clean);
    CHECK_FALSE(taken->spot);
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 0});

    fixture.control->putBack();
    CHECK(fixture.control->feedback() == DrillControl::Feedback::putBack);
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 1});
    CHECK(fixture.control->takenBack()->mark == Mark::missed);
    fixture.control->putBack();
    CHECK(fixture.record() == before);
    CHECK(fixture.control->takenBack() == nullptr);
    fixture.control->putBack();
    CHECK(fixture.onDisk<CorrectionFact>().size() == 2);
}

TEST_CASE("what was put back can be taken back and put back again") {
    DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(ended));
    stopAfter(fixture);
    const PassageRecord before = fixture.record();
    for (int turn = 0; turn < 3; ++turn) {
        fixture.control->takeBack();
        REQUIRE(fixture.control->takenBack() != nullptr);
        CHECK(fixture.control->takenBack()->what == TakenBack::What::run);
        CHECK(fixture.standing() == Standing{Tempo::bpm(84), 0});
        fixture.control->putBack();
        CHECK(fixture.record() == before);
    }
}

TEST_CASE("a tempo set by hand is put back, whether it was recorded or not") {
    DrillFixture fixture;
    fixture.control->faster();
    fixture.control->takeBack();
    REQUIRE(fixture.control->takenBack() != nullptr);
    CHECK(fixture.control->takenBack()->what == TakenBack::What::tempo);
    CHECK(fixture.control->takenBack()->tempo == Tempo::bpm(85));
    fixture.control->putBack();
    CHECK(fixture.control->standing().tempo == Tempo::bpm(85));
    CHECK(fixture.onDisk<CorrectionFact>().empty());

    fixture.press();
    fixture.play(1);
    stopAfter(fixture);
    fixture.control->takeBack();
    CHECK(fixture.standing().tempo == Tempo::bpm(84));
    CHECK(fixture.control->takenBack()->tempo == Tempo::bpm(85));
    fixture.control->putBack();
    CHECK(fixture.standing().tempo == Tempo::bpm(85));
}

TEST_CASE("a mark changed in the log is taken back as such, and put back") {
    DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(ended));
    stopAfter(fixture);
    fixture.book->record(
        CorrectionFact{fixture.passageId, fixture.record().entries.front().id, Mark::missed});
    CHECK(fixture.standing() == Standing{Tempo::bpm(80), 0});
    fixture.control->takeBack();
    CHECK(fixture.control->takenBack()->what == TakenBack::What::mark);
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 1});
    fixture.control->putBack();
    CHECK(fixture.standing() == Standing{Tempo::bpm(80), 0});
}

TEST_CASE("a start and another passage leave nothing to put back") {
    DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(ended));
    stopAfter(fixture);
    fixture.control->takeBack();
    REQUIRE(fixture.control->takenBack() != nullptr);
    fixture.press();
    fixture.play(0.5);
    CHECK(fixture.control->takenBack() == nullptr);
    fixture.control->takeBack(); // nothing is left
    CHECK(fixture.control->takenBack() == nullptr);
    stopAfter(fixture);
    fixture.control->faster();
    fixture.control->takeBack();
    REQUIRE(fixture.control->takenBack() != nullptr);
    fixture.control->open({});
    CHECK(fixture.control->takenBack() == nullptr);
}

TEST_CASE("what is put back while the click runs moves the tempo at once") {
    DrillFixture fixture;
    fixture.missRuns(1);
    REQUIRE(fixture.control->state() == DrillControl::State::playing);
    fixture.control->takeBack();
    fixture.play(0.2);
    CHECK(fixture.control->standing().tempo == Tempo::bpm(84));
    fixture.control->putBack();
    fixture.play(0.2);
    CHECK(fixture.control->standing().tempo == Tempo::bpm(80));
}
