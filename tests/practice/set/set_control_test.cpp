// SPDX-License-Identifier: GPL-3.0-or-later
// Passages taken in turn, in virtual time.
#include "set_fixture.h"

using namespace piolo;
using piolo::practice::DrillControl;
using piolo::practice::SetControl;
using piolo::practice::TurnLength;
using piolo::test::PlayedRun;
using piolo::test::SetFixture;
using Kind = engine::Event::Kind;

namespace {

using Order = std::vector<std::size_t>;

} // namespace

TEST_CASE("passages are taken in turn, so many runs each, hands free") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(3, 2));
    fixture.playRuns(9);
    fixture.stop();
    CHECK(fixture.turns() == Order{0, 0, 1, 1, 2, 2, 0, 0, 1});
    CHECK_FALSE(fixture.set.playing());
}

TEST_CASE("the runs of a set are those of drilling its passages one after the other") {
    SetFixture inTurn;
    REQUIRE(inTurn.startSet(3, 2));
    SetFixture single;
    for (int turn = 0; turn < 6; ++turn) {
        const auto index = static_cast<std::size_t>(turn % 3);
        single.control->open(single.ids[index]);
        single.press();
        for (SetFixture* fixture : {&inTurn, &single}) {
            turn % 2 == 0 ? fixture->missNext() : (void)0;
            fixture->playRuns(2);
        }
        single.stop();
    }
    inTurn.stop();
    REQUIRE(inTurn.runs().size() == 12);
    CHECK(inTurn.runs() == single.runs());
    for (std::size_t index = 0; index < 3; ++index)
        CHECK(inTurn.standingOf(index) == single.standingOf(index));
    CHECK(inTurn.onDisk<BackFact>().empty());
    CHECK(inTurn.onDisk<TempoFact>().empty());
}

TEST_CASE("by minutes, a turn goes on to the end of the run in which the time is up") {
    SetFixture fixture;
    REQUIRE(fixture.set.start(fixture.first(2), {.by = TurnLength::By::minutes, .minutes = 1}));
    REQUIRE(fixture.playUntil(Kind::stopped));
    std::vector<std::uint64_t> ends;
    for (const auto& note : fixture.notes)
        if (note.event.kind == Kind::runEnded) ends.push_back(note.event.sample);
    constexpr std::uint64_t countIn = 2 * 48'000;
    REQUIRE(ends.size() > 2);
    CHECK(ends[ends.size() - 2] < countIn + 60 * 48'000);
    CHECK(ends.back() >= countIn + 60 * 48'000);
    fixture.playRuns(1);
    CHECK(fixture.control->passage() == fixture.ids[1]);
}

TEST_CASE("while a turn is announced, its passage is open and nothing clicks") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(2, 1));
    CHECK(fixture.set.announcing());
    REQUIRE(fixture.playUntil(Kind::stopped));
    fixture.play(0.2);
    CHECK(fixture.control->passage() == fixture.ids[1]);
    CHECK(fixture.control->state() == DrillControl::State::playing);
    CHECK(fixture.control->standing() == Standing{Tempo::bpm(96), 0});
    CHECK(fixture.set.announcing());
    CHECK(fixture.set.place() == 1);
    CHECK(fixture.set.nextPlace() == 0);
    fixture.play(2.7);
    CHECK(fixture.set.announcing());
    fixture.play(0.4);
    CHECK_FALSE(fixture.set.announcing());
}

TEST_CASE("stopped while a turn is announced, the set is over and has left no run") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(2, 1));
    REQUIRE(fixture.playUntil(Kind::stopped));
    fixture.play(1.5);
    REQUIRE(fixture.set.announcing());
    fixture.stop();
    CHECK_FALSE(fixture.set.playing());
    CHECK_FALSE(fixture.set.announcing());
    fixture.play(10);
    CHECK(fixture.turns() == Order{0});
}

TEST_CASE("stopped between the end of a turn and its being heard, the set is over") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(2, 1));
    REQUIRE(fixture.playUntil(Kind::stopped));
    fixture.stop();
    CHECK_FALSE(fixture.set.playing());
    CHECK(fixture.control->passage() == fixture.ids[0]);
    CHECK_FALSE(fixture.session->active());
    fixture.press();
    fixture.playRuns(1);
    CHECK(fixture.turns() == Order{0, 0});
}

TEST_CASE("three misses ask at the end of a turn; once answered, the next passage follows") {
    SetFixture fixture;
    fixture.stayAtStart(0);
    REQUIRE(fixture.startSet(2, 3));
    fixture.missThree();
    REQUIRE(fixture.control->state() == DrillControl::State::paused);
    CHECK(fixture.control->pauseReason() == engine::Pause::threeMisses);
    CHECK(fixture.control->passage() == fixture.ids[0]);
    fixture.play(20);
    Standing standing{Tempo::bpm(84), 0};
    SUBCASE("as it was") { fixture.control->goOn(); }
    SUBCASE("at half the tempo, which is the passage's that was asked about") {
        fixture.control->halveTempo();
        standing.tempo = Tempo::bpm(42);
    }
    fixture.playRuns(1);
    CHECK(fixture.turns() == Order{0, 0, 0, 1});
    CHECK(fixture.standingOf(0) == standing);
    CHECK(fixture.standingOf(1) == Standing{Tempo::bpm(96), 1});
    CHECK(fixture.set.playing());
}

TEST_CASE("stopped in a pause, the set is over") {
    SetFixture fixture;
    fixture.stayAtStart(0);
    REQUIRE(fixture.startSet(2, 3));
    fixture.missThree();
    fixture.stop();
    CHECK_FALSE(fixture.set.playing());
    fixture.play(10);
    CHECK(fixture.turns() == Order{0, 0, 0});
}

TEST_CASE("nobody is asked less often in a set, and a no is about the runs of every passage") {
    SetFixture fixture;
    PracticeSettings settings;
    settings.pauseAfterRuns = 5;
    fixture.book->record(SettingsFact{settings});
    REQUIRE(fixture.startSet(2, 2));
    REQUIRE(fixture.playUntil(Kind::paused));
    fixture.play(0.2);
    CHECK(fixture.turns() == Order{0, 0, 1, 1, 0});
    CHECK(fixture.control->unheardRuns() == 5);
    fixture.control->takeBack();
    const auto doubts = fixture.onDisk<DoubtFact>();
    REQUIRE(doubts.size() == 2);
    CHECK(doubts[0].passage == fixture.ids[0]);
    CHECK(doubts[0].runs.size() == 3);
    CHECK(doubts[1].passage == fixture.ids[1]);
    CHECK(doubts[1].runs.size() == 2);
    CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(84), 0});
    CHECK(fixture.standingOf(1) == Standing{Tempo::bpm(96), 0});
    fixture.playRuns(2);
    CHECK(fixture.turns() == Order{0, 0, 1, 1, 0, 0, 1});
}

TEST_CASE("a miss pressed before the next passage's first note is a late miss of the last run") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(2, 2));
    fixture.playRuns(2);
    SUBCASE("in the announcement") { fixture.play(1); }
    SUBCASE("in the count-in") { fixture.play(4); }
    CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(86), 0});
    const Standing next = fixture.control->standing();
    fixture.press();
    fixture.play(0.2);
    const auto late = fixture.onDisk<LateMissFact>();
    REQUIRE(late.size() == 1);
    CHECK(late.front().passage == fixture.ids[0]);
    CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(80), 0});
    CHECK(fixture.control->feedback() == DrillControl::Feedback::missed);
    CHECK(fixture.control->standing() == next);
    fixture.playRuns(2);
    CHECK(fixture.standingOf(1) == Standing{Tempo::bpm(98), 0});
    CHECK(fixture.turns() == Order{0, 0, 1, 1});
}

TEST_CASE("at whatever moment around the end of a turn a miss is pressed, it is one of the last run") {
    for (int steps = 0; steps < 24; ++steps) {
        CAPTURE(steps);
        SetFixture fixture;
        REQUIRE(fixture.startSet(2, 1));
        REQUIRE(fixture.playUntil(Kind::runEnded));
        for (int step = 0; step < steps; ++step) fixture.step();
        fixture.press();
        fixture.play(1);
        CHECK(fixture.onDisk<LateMissFact>().size() == 1);
        CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(80), 0});
        CHECK(fixture.control->passage() == fixture.ids[1]);
        CHECK(fixture.control->standing() == Standing{Tempo::bpm(96), 0});
        fixture.playRuns(1);
        CHECK(fixture.found.tempo == Tempo::bpm(96));
        CHECK(fixture.found.mark == Mark::clean);
        CHECK(fixture.turns() == Order{0, 1});
    }
}

TEST_CASE("a press that was no miss is withdrawn from the passage it was counted for") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(2, 2));
    fixture.playRuns(2);
    fixture.play(1);
    fixture.press();
    fixture.play(0.2);
    REQUIRE(fixture.standingOf(0).tempo == Tempo::bpm(80));
    SUBCASE("it was a hold: stop") {
        fixture.control->strikeHeld();
        fixture.play(0.5);
        CHECK_FALSE(fixture.set.playing());
        CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(86), 0});
    }
    SUBCASE("it was the first of two: take back the last run") {
        fixture.control->strikeTwice();
        fixture.play(0.5);
        CHECK(fixture.set.playing());
        CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(84), 1});
    }
    for (const BackFact& back : fixture.onDisk<BackFact>()) CHECK(back.passage == fixture.ids[0]);
}

TEST_CASE("take back finds the newest mark of the set, whichever passage it belongs to") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(2, 1));
    fixture.playRuns(3); // 0, 1, 0, and the turn of 1 is announced
    REQUIRE(fixture.control->passage() == fixture.ids[1]);
    fixture.control->takeBack();
    CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(84), 1});
    CHECK(fixture.standingOf(1) == Standing{Tempo::bpm(96), 1});
    fixture.control->takeBack();
    CHECK(fixture.standingOf(1) == Standing{Tempo::bpm(96), 0});
    fixture.control->takeBack();
    CHECK(fixture.standingOf(0) == Standing{Tempo::bpm(84), 0});
    fixture.control->takeBack();
    CHECK(fixture.control->feedback() == DrillControl::Feedback::nothingToTakeBack);
    CHECK(fixture.onDisk<BackFact>().size() == 3);
    REQUIRE(fixture.playUntil(Kind::runEnded));
    CHECK(fixture.found.before == Standing{Tempo::bpm(96), 0});
}

TEST_CASE("what a set says of each passage is what counted since it began") {
    SetFixture fixture;
    fixture.press();
    fixture.playRuns(1); // before the set
    fixture.stop();
    REQUIRE(fixture.startSet(2, 2));
    fixture.missNext();
    fixture.playRuns(5);
    fixture.stop();
    REQUIRE(fixture.set.parts().size() == 2);
    CHECK(fixture.set.parts()[0].figures.clean == 2);
    CHECK(fixture.set.parts()[0].figures.missed == 1);
    CHECK(fixture.set.parts()[1].figures.runs() == 2);
    fixture.press(); // what is drilled afterwards is not the set's
    fixture.playRuns(1);
    fixture.stop();
    CHECK(fixture.set.parts()[0].figures.runs() == 3);
}

TEST_CASE("a rest is due after 25 minutes of playing in turn, and not before the click stops") {
    SetFixture fixture;
    PracticeSettings settings;
    settings.pauseAfterRuns = 0;
    fixture.book->record(SettingsFact{settings});
    REQUIRE(fixture.startSet(2, 1));
    fixture.play(24.0 * 60);
    fixture.stop();
    CHECK_FALSE(fixture.control->restDue());
    REQUIRE(fixture.startSet(2, 1));
    fixture.play(62);
    CHECK_FALSE(fixture.control->restDue());
    fixture.stop();
    CHECK(fixture.control->restDue());
}

TEST_CASE("a window that hangs over the end of a turn loses no run, and plays nothing of the next passage") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(2, 1));
    REQUIRE(fixture.playUntil(Kind::runBegan));
    for (int block = 0; block < 3000; ++block) {
        fixture.sound.render();
        fixture.session->poll();
    }
    fixture.play(0.2);
    CHECK(fixture.turns() == Order{0});
    fixture.playRuns(1);
    CHECK(fixture.turns() == Order{0, 1});
}

TEST_CASE("a passage that is removed meanwhile is left out; if all are, the set stops") {
    SetFixture fixture;
    REQUIRE(fixture.startSet(3, 1));
    fixture.book->record(RemovalFact{fixture.ids[1], true});
    fixture.playRuns(2);
    CHECK(fixture.turns() == Order{0, 2});
    REQUIRE(fixture.set.playing());
    fixture.book->record(RemovalFact{fixture.ids[0], true});
    fixture.book->record(RemovalFact{fixture.ids[2], true});
    fixture.play(20);
    CHECK_FALSE(fixture.set.playing());
    CHECK(fixture.control->state() == DrillControl::State::stopped);
}

TEST_CASE("a set has two to four different passages, and begins only while nothing is played") {
    SetFixture fixture;
    const TurnLength length;
    CHECK_FALSE(fixture.set.start({fixture.ids[0]}, length));
    CHECK_FALSE(fixture.set.start({fixture.ids[0], fixture.ids[0]}, length));
    CHECK_FALSE(fixture.set.start({fixture.ids[0], Id{7, 7}}, length));
    CHECK_FALSE(fixture.playing());
    fixture.press();
    CHECK_FALSE(fixture.set.start(fixture.first(2), length));
    fixture.stop();
    CHECK(fixture.set.start(fixture.first(4), length));
}
