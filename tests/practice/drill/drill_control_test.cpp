// SPDX-License-Identifier: GPL-3.0-or-later
#include "../drill_fixture.h"

using namespace piolo;
using piolo::practice::DrillControl;
using piolo::test::DrillFixture;
using Kind = engine::Event::Kind;

TEST_CASE("a manual tempo change is recorded once, when the next run begins") {
    DrillFixture fixture;
    fixture.control->slower();
    fixture.control->slower();
    CHECK(fixture.control->standing().tempo == Tempo::bpm(82));
    CHECK(fixture.onDisk<TempoFact>().empty());
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    CHECK(fixture.found.tempo == Tempo::bpm(82));
    const auto set = fixture.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().tempo == Tempo::bpm(82));
    CHECK(set.front().reason == Reason::hand);
    CHECK(fixture.standing() == Standing{Tempo::bpm(82), 1});
}

TEST_CASE("changing the tempo and changing it back sets nothing, and the streak stays") {
    DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.control->stop();
    fixture.play(0.5);
    fixture.control->faster();
    CHECK(fixture.control->standing().streak == 0);
    fixture.control->slower();
    CHECK(fixture.control->standing().streak == 1);
    fixture.press();
    CHECK(fixture.onDisk<TempoFact>().empty());
}

TEST_CASE("while the click runs, Up and Down do nothing") {
    DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.control->faster();
    CHECK(fixture.control->standing().tempo == Tempo::bpm(84));
}

TEST_CASE("a run during which the machine was suspended is void, and the drill stops") {
    DrillFixture fixture;
    fixture.sound.sleep(3600); // before it began
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(0.5);
    REQUIRE(fixture.control->state() == DrillControl::State::playing);
    fixture.sound.sleep(3600);
    fixture.play(20.0);
    CHECK(fixture.control->state() == DrillControl::State::stopped);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().mark == Mark::voided);
}

TEST_CASE("a click stopped before it is heard, and started again, still stops") {
    DrillFixture fixture;
    fixture.play(0.5); // what is rendered now will be heard 100 ms later
    fixture.press();
    fixture.step();
    fixture.control->stop();
    fixture.step();
    REQUIRE(fixture.control->state() == DrillControl::State::stopped);
    fixture.press();
    fixture.play(0.5);
    REQUIRE(fixture.control->state() == DrillControl::State::playing);
    fixture.control->stop();
    fixture.step();
    CHECK(fixture.control->state() == DrillControl::State::stopped);
    CHECK_FALSE(fixture.session->active());
}

TEST_CASE("back discards a manual tempo change that was not played yet") {
    DrillFixture fixture;
    fixture.control->faster();
    fixture.control->takeBack();
    CHECK(fixture.control->standing().tempo == Tempo::bpm(84));
    CHECK(fixture.onDisk<BackFact>().empty());
}

TEST_CASE("if nothing is left to take back, back says so and records nothing") {
    DrillFixture fixture;
    fixture.control->takeBack();
    CHECK(fixture.control->feedback() == DrillControl::Feedback::nothingToTakeBack);
    CHECK(fixture.onDisk<BackFact>().empty());
}

TEST_CASE("in context, two more bars sound on either side, and a miss there keeps its bar") {
    DrillFixture fixture;
    fixture.control->begin(RunKind::context);
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(0.5);
    fixture.press(); // in the first bar of the context, two before the passage
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.control->stop();
    fixture.play(0.5);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::context);
    REQUIRE(runs.front().spots.size() == 1);
    CHECK(runs.front().spots.front().bar == DrillFixture::usual().music.firstBar - 2);
}

TEST_CASE("unheard runs do not count after a no, and their climbs are taken back") {
    DrillFixture fixture;
    PracticeSettings settings;
    settings.pauseAfterRuns = 7;
    fixture.book->record(SettingsFact{settings});
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::paused));
    CHECK(fixture.standing() == Standing{Tempo::bpm(86), 2});
    fixture.play(0.2);
    REQUIRE(fixture.control->state() == DrillControl::State::paused);
    CHECK(fixture.control->pauseReason() == engine::Pause::noKey);
    CHECK(fixture.control->unheardRuns() == 7);

    SUBCASE("no") {
        fixture.control->takeBack();
        CHECK(fixture.standing() == Standing{Tempo::bpm(84), 0});
        const auto doubts = fixture.onDisk<DoubtFact>();
        REQUIRE(doubts.size() == 1);
        CHECK(doubts.front().runs.size() == 7);
        REQUIRE(fixture.playUntil(Kind::runBegan));
        CHECK(fixture.found.tempo == Tempo::bpm(84));
    }
    SUBCASE("yes") {
        fixture.press();
        CHECK(fixture.standing() == Standing{Tempo::bpm(86), 2});
        CHECK(fixture.onDisk<DoubtFact>().empty());
        REQUIRE(fixture.playUntil(Kind::runBegan));
        CHECK(fixture.found.tempo == Tempo::bpm(86));
    }
}

TEST_CASE(
    "three misses in a row cause a pause with suggestions; half tempo is a tempo fact with its reason") {
    Passage passage = DrillFixture::usual();
    passage.tempi.rule.floor = passage.tempi.start;
    DrillFixture fixture(passage);
    fixture.missRuns(3);
    REQUIRE(fixture.control->state() == DrillControl::State::paused);
    CHECK(fixture.control->pauseReason() == engine::Pause::threeMisses);
    CHECK(fixture.control->halfTempo() == Tempo::bpm(42));
    fixture.control->slower();
    const auto set = fixture.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().tempo == Tempo::bpm(42));
    CHECK(set.front().reason == Reason::offer);
    REQUIRE(fixture.playUntil(Kind::runBegan));
    CHECK(fixture.found.tempo == Tempo::bpm(42));
    CHECK(fixture.control->state() == DrillControl::State::playing);
}

TEST_CASE("Return ends an open-ended run clean, and Space ends it missed") {
    Passage passage = DrillFixture::usual();
    passage.music.bars = 0;
    DrillFixture fixture(passage);
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(7);
    fixture.control->markClean(fixture.sound.nowNanos());
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(5);
    fixture.press();
    fixture.play(0.5);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    CHECK(runs[0].mark == Mark::clean);
    CHECK(runs[1].mark == Mark::missed);
}

TEST_CASE("Return does nothing in a run that ends by itself") {
    DrillFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(1);
    fixture.control->markClean(fixture.sound.nowNanos());
    fixture.play(1);
    CHECK(fixture.onDisk<RunFact>().empty());
}

TEST_CASE("a rest is suggested once after 25 minutes of playing, and only while nothing runs") {
    DrillFixture fixture;
    PracticeSettings settings;
    settings.pauseAfterRuns = 0;
    fixture.book->record(SettingsFact{settings});
    fixture.press();
    fixture.play(25 * 60 + 1);
    CHECK_FALSE(fixture.control->restDue());
    fixture.control->stop();
    fixture.play(0.5);
    CHECK(fixture.control->restDue());
    fixture.control->dismissRest();
    CHECK_FALSE(fixture.control->restDue());
}

TEST_CASE("in a read-only folder, the drill runs and records nothing") {
    DrillFixture fixture;
    auto second = practice::PracticeBook::open({fixture.folder(), test::testDevice, fixture.state()});
    REQUIRE(second);
    practice::PracticeBook& book = *second.value();
    REQUIRE(book.readOnly());
    fixture.book->flush(10'000);
    auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound(engine);
    practice::DrillSession session(book, sound, engine, practice::DrillSession::Reading::byHand);
    Passage passage = DrillFixture::usual();
    passage.id = fixture.passageId;
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
    CHECK(fixture.onDisk<RunFact>().empty());
}

TEST_CASE("runs without the click are recorded as such and leave the standing alone") {
    DrillFixture fixture;
    auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound(engine);
    practice::DrillSession session(*fixture.book, sound, engine, practice::DrillSession::Reading::byHand);
    Passage passage = DrillFixture::usual();
    passage.id = fixture.passageId;
    REQUIRE(session.begin(passage, {Tempo::bpm(96), 0}, RunKind::silent));
    for (int block = 0; block < 3100; ++block) {
        sound.render();
        session.poll();
    }
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    CHECK(runs.back().kind == RunKind::silent);
    CHECK(runs.back().mark == Mark::clean);
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 0});
}
