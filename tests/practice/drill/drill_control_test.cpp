// SPDX-License-Identifier: GPL-3.0-or-later
#include "../drill_fixture.h"

using namespace piolo;
using piolo::practice::DrillControl;
using piolo::test::DrillFixture;
using Kind = engine::Event::Kind;

TEST_CASE("a manual tempo change is recorded once, when the next run begins") {
    DrillFixture desk;
    desk.control->slower();
    desk.control->slower();
    CHECK(desk.control->standing().tempo == Tempo::bpm(82));
    CHECK(desk.onDisk<TempoFact>().empty());
    desk.press();
    REQUIRE(desk.playUntil(Kind::runEnded));
    CHECK(desk.found.tempo == Tempo::bpm(82));
    const auto set = desk.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().tempo == Tempo::bpm(82));
    CHECK(set.front().reason == Reason::hand);
    CHECK(desk.standing() == Standing{Tempo::bpm(82), 1});
}

TEST_CASE("changing the tempo and changing it back sets nothing, and the streak stays") {
    DrillFixture desk;
    desk.press();
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.control->stop();
    desk.play(0.5);
    desk.control->faster();
    CHECK(desk.control->standing().streak == 0);
    desk.control->slower();
    CHECK(desk.control->standing().streak == 1);
    desk.press();
    CHECK(desk.onDisk<TempoFact>().empty());
}

TEST_CASE("while the click runs, Up and Down do nothing") {
    DrillFixture desk;
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.control->faster();
    CHECK(desk.control->standing().tempo == Tempo::bpm(84));
}

TEST_CASE("a click stopped before it is heard, and started again, still stops") {
    DrillFixture desk;
    desk.play(0.5); // what is rendered now will be heard 100 ms later
    desk.press();
    desk.step();
    desk.control->stop();
    desk.step();
    REQUIRE(desk.control->state() == DrillControl::State::stopped);
    desk.press();
    desk.play(0.5);
    REQUIRE(desk.control->state() == DrillControl::State::playing);
    desk.control->stop();
    desk.step();
    CHECK(desk.control->state() == DrillControl::State::stopped);
    CHECK_FALSE(desk.session->active());
}

TEST_CASE("back discards a manual tempo change that was not played yet") {
    DrillFixture desk;
    desk.control->faster();
    desk.control->takeBack();
    CHECK(desk.control->standing().tempo == Tempo::bpm(84));
    CHECK(desk.onDisk<BackFact>().empty());
}

TEST_CASE("if nothing is left to take back, back says so and records nothing") {
    DrillFixture desk;
    desk.control->takeBack();
    CHECK(desk.control->feedback() == DrillControl::Feedback::nothingToTakeBack);
    CHECK(desk.onDisk<BackFact>().empty());
}

TEST_CASE("in context, two more bars sound on either side, and a miss there keeps its bar") {
    DrillFixture desk;
    desk.control->begin(RunKind::context);
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(0.5);
    desk.press(); // in the first bar of the context, two before the passage
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.control->stop();
    desk.play(0.5);
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::context);
    REQUIRE(runs.front().spots.size() == 1);
    CHECK(runs.front().spots.front().bar == DrillFixture::usual().music.firstBar - 2);
}

TEST_CASE("unheard runs do not count after a no, and their climbs are taken back") {
    DrillFixture desk;
    PracticeSettings settings;
    settings.pauseAfterRuns = 7;
    desk.book->record(SettingsFact{settings});
    desk.press();
    REQUIRE(desk.playUntil(Kind::paused));
    CHECK(desk.standing() == Standing{Tempo::bpm(86), 2});
    desk.play(0.2);
    REQUIRE(desk.control->state() == DrillControl::State::paused);
    CHECK(desk.control->pauseReason() == engine::Pause::noKey);
    CHECK(desk.control->unheardRuns() == 7);

    SUBCASE("no") {
        desk.control->takeBack();
        CHECK(desk.standing() == Standing{Tempo::bpm(84), 0});
        const auto doubts = desk.onDisk<DoubtFact>();
        REQUIRE(doubts.size() == 1);
        CHECK(doubts.front().runs.size() == 7);
        REQUIRE(desk.playUntil(Kind::runBegan));
        CHECK(desk.found.tempo == Tempo::bpm(84));
    }
    SUBCASE("yes") {
        desk.press();
        CHECK(desk.standing() == Standing{Tempo::bpm(86), 2});
        CHECK(desk.onDisk<DoubtFact>().empty());
        REQUIRE(desk.playUntil(Kind::runBegan));
        CHECK(desk.found.tempo == Tempo::bpm(86));
    }
}

TEST_CASE(
    "three misses in a row cause a pause with suggestions; half tempo is a tempo fact with its reason") {
    Passage passage = DrillFixture::usual();
    passage.tempi.rule.floor = passage.tempi.start;
    DrillFixture desk(passage);
    desk.missRuns(3);
    REQUIRE(desk.control->state() == DrillControl::State::paused);
    CHECK(desk.control->pauseReason() == engine::Pause::threeMisses);
    CHECK(desk.control->halfTempo() == Tempo::bpm(42));
    desk.control->slower();
    const auto set = desk.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().tempo == Tempo::bpm(42));
    CHECK(set.front().reason == Reason::offer);
    REQUIRE(desk.playUntil(Kind::runBegan));
    CHECK(desk.found.tempo == Tempo::bpm(42));
    CHECK(desk.control->state() == DrillControl::State::playing);
}

TEST_CASE("Return ends an open-ended run clean, and Space ends it missed") {
    Passage passage = DrillFixture::usual();
    passage.music.bars = 0;
    DrillFixture desk(passage);
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(7);
    desk.control->markClean(desk.sound.nowNanos());
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(5);
    desk.press();
    desk.play(0.5);
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    CHECK(runs[0].mark == Mark::clean);
    CHECK(runs[1].mark == Mark::missed);
}

TEST_CASE("Return does nothing in a run that ends by itself") {
    DrillFixture desk;
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(1);
    desk.control->markClean(desk.sound.nowNanos());
    desk.play(1);
    CHECK(desk.onDisk<RunFact>().empty());
}

TEST_CASE("a rest is suggested once after 25 minutes of playing, and only while nothing runs") {
    DrillFixture desk;
    PracticeSettings settings;
    settings.pauseAfterRuns = 0;
    desk.book->record(SettingsFact{settings});
    desk.press();
    desk.play(25 * 60 + 1);
    CHECK_FALSE(desk.control->restDue());
    desk.control->stop();
    desk.play(0.5);
    CHECK(desk.control->restDue());
    desk.control->dismissRest();
    CHECK_FALSE(desk.control->restDue());
}

TEST_CASE("in a read-only folder, the drill runs and records nothing") {
    DrillFixture desk;
    auto second = practice::PracticeBook::open({desk.folder(), test::deskDevice, desk.state()});
    REQUIRE(second);
    practice::PracticeBook& book = *second.value();
    REQUIRE(book.readOnly());
    desk.book->flush(10'000);
    auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound(engine);
    practice::DrillSession session(book, sound, engine, practice::DrillSession::Reading::byHand);
    Passage passage = DrillFixture::usual();
    passage.id = desk.passageId;
    REQUIRE(session.begin(passage, {Tempo::bpm(84), 0}, RunKind::run));
    int ended = 0;
    QObject::connect(&session, &practice::DrillSession::noted, [&](const practice::DrillNote& note) {
        ended += note.event.kind == Kind::runEnded ? 1 : 0;
    });
    for (int block = 0; block < 3100; ++block) {
        sound.render();
        session.poll();
    }
    CHECK(ended == 2);
    CHECK(desk.onDisk<RunFact>().empty());
}

TEST_CASE("runs without the click are recorded as such and leave the standing alone") {
    DrillFixture desk;
    auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound(engine);
    practice::DrillSession session(*desk.book, sound, engine, practice::DrillSession::Reading::byHand);
    Passage passage = DrillFixture::usual();
    passage.id = desk.passageId;
    REQUIRE(session.begin(passage, {Tempo::bpm(96), 0}, RunKind::silent));
    for (int block = 0; block < 3100; ++block) {
        sound.render();
        session.poll();
    }
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    CHECK(runs.back().kind == RunKind::silent);
    CHECK(runs.back().mark == Mark::clean);
    CHECK(desk.standing() == Standing{Tempo::bpm(84), 0});
}
