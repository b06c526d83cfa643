// SPDX-License-Identifier: GPL-3.0-or-later
#include "../practice_fixture.h"

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::PracticeFixture;
using Kind = engine::Event::Kind;

TEST_CASE("a tempo set by hand is journalled once, when the next run begins") {
    PracticeFixture desk;
    desk.drill->slower();
    desk.drill->slower();
    CHECK(desk.drill->tempoText() == "82");
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

TEST_CASE("a tempo moved away by hand and back again sets nothing, and the streak stays") {
    PracticeFixture desk;
    desk.press();
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    desk.drill->faster();
    CHECK(desk.drill->streak() == 0);
    desk.drill->slower();
    CHECK(desk.drill->streak() == 1);
    desk.press();
    CHECK(desk.onDisk<TempoFact>().empty());
}

TEST_CASE("while the click runs Up and Down do nothing") {
    PracticeFixture desk;
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.drill->faster();
    CHECK(desk.drill->tempoText() == "84");
}

TEST_CASE("a click stopped before it is heard, and started again, still stops") {
    PracticeFixture desk;
    desk.play(0.5); // what is rendered now is heard 100 ms later
    desk.press();
    desk.step();
    desk.drill->stop();
    desk.step();
    REQUIRE(desk.drill->state() == DrillModel::State::Stopped);
    desk.press();
    desk.play(0.5);
    REQUIRE(desk.drill->state() == DrillModel::State::Playing);
    desk.drill->stop();
    desk.step();
    CHECK(desk.drill->state() == DrillModel::State::Stopped);
    CHECK_FALSE(desk.session->active());
}

TEST_CASE("back drops a tempo that was set by hand and not played yet") {
    PracticeFixture desk;
    desk.drill->faster();
    desk.drill->takeBack();
    CHECK(desk.drill->tempoText() == "84");
    CHECK(desk.onDisk<BackFact>().empty());
}

TEST_CASE("with nothing left to take back, back says so and records nothing") {
    PracticeFixture desk;
    desk.drill->takeBack();
    CHECK(desk.drill->feedback() == DrillModel::Feedback::NothingToTakeBack);
    CHECK(desk.onDisk<BackFact>().empty());
}

TEST_CASE("a try plays one run at the target, is logged apart and moves nothing") {
    PracticeFixture desk;
    desk.drill->attempt();
    CHECK(desk.drill->apart());
    CHECK(desk.drill->apartText() == "a try: moves nothing");
    REQUIRE(desk.playUntil(Kind::stopped));
    CHECK(desk.drill->state() == DrillModel::State::Playing); // its last bar can still be heard
    desk.play(0.2);
    CHECK(desk.drill->state() == DrillModel::State::Stopped);
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::attempt);
    CHECK(runs.front().tempo == Tempo::bpm(96));
    CHECK(desk.standing() == Standing{Tempo::bpm(84), 0});
    CHECK(desk.drill->tempoText() == "84");
}

TEST_CASE("without the click: run after run at the target, with its own mark, moving nothing") {
    PracticeFixture desk;
    desk.drill->playSilent();
    CHECK(desk.drill->apartText() == "without the click: moves nothing");
    CHECK(desk.drill->tempoText() == "96");
    REQUIRE(desk.playUntil(Kind::runEnded));
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(0.5); // heard 100 ms late
    desk.press();
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    CHECK(runs[0].kind == RunKind::silent);
    CHECK(runs[0].mark == Mark::clean);
    CHECK(runs[1].mark == Mark::missed);
    CHECK(desk.standing() == Standing{Tempo::bpm(84), 0});
    CHECK_FALSE(desk.drill->apart());
    CHECK(desk.drill->tempoText() == "84");
}

TEST_CASE("in context two bars more sound on either side, and a miss there keeps its bar") {
    PracticeFixture desk;
    desk.drill->playInContext();
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(0.5);
    desk.press(); // in the first bar of the context, two before the passage's own
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::context);
    REQUIRE(runs.front().spots.size() == 1);
    CHECK(runs.front().spots.front().bar == PracticeFixture::usual().music.firstBar - 2);
}

TEST_CASE("the player says the stage; the log proposes the next one and says why") {
    PracticeFixture desk;
    auto* const stages = desk.drill->stages();
    CHECK(stages->stage() == 0);
    CHECK(stages->evidence() == "Next: a full streak at the target.");
    CHECK(stages->proposed() == "");
    desk.drill->setStage(2);
    CHECK(stages->stage() == 2);
    CHECK(stages->evidence() == "Clean in a row without the click, on one day: 0 of 3.");
    desk.drill->playSilent();
    for (int run = 0; run < 3; ++run) REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    CHECK(stages->evidence() == "Clean in a row without the click, on one day: 3 of 3.");
    CHECK(stages->proposed() == "in context");
    desk.drill->setStage(1);
    desk.drill->setStage(1); // said once is enough
    desk.drill->setStage(9);
    CHECK(desk.onDisk<StageFact>().size() == 2);
    CHECK(stages->stage() == 1);
}

TEST_CASE("a new day opens lower, and says so in the log with its reason") {
    PracticeFixture desk;
    desk.press();
    for (int run = 0; run < 11; ++run) REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    CHECK(desk.standing() == Standing{Tempo::bpm(88), 1});
    desk.clock->base += 86'400'000;
    desk.drill->open(QString::fromStdString(desk.passageId.text()));
    desk.drill->dismissRest();
    emit desk.book->changed({});
    // The last full streak was at 86; two rungs below are 82, which is below the start: 84.
    CHECK(desk.drill->tempoText() == "84");
    CHECK_FALSE(desk.drill->openingText().isEmpty());
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    CHECK(desk.found.tempo == Tempo::bpm(84));
    const auto set = desk.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().reason == Reason::newDay);
    CHECK(set.front().tempo == Tempo::bpm(84));
}

TEST_CASE("runs that nobody listened to count for nothing after a no, and their climbs are taken back") {
    PracticeFixture desk;
    PracticeSettings settings;
    settings.pauseAfterRuns = 7;
    desk.book->record(SettingsFact{settings});
    desk.press();
    REQUIRE(desk.playUntil(Kind::paused));
    CHECK(desk.standing() == Standing{Tempo::bpm(86), 2});
    desk.play(0.2);
    REQUIRE(desk.drill->state() == DrillModel::State::Paused);
    CHECK(desk.drill->pauseKind() == DrillModel::PauseKind::NoKey);
    CHECK(desk.drill->unheardRuns() == 7);

    SUBCASE("no") {
        desk.drill->takeBack();
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

namespace {

void missRuns(PracticeFixture& desk, int misses) {
    desk.press();
    for (int miss = 0; miss < misses; ++miss) {
        REQUIRE(desk.playUntil(Kind::runBegan));
        desk.play(0.5);
        desk.press();
        desk.play(0.5);
    }
    desk.play(1.0);
}

} // namespace

TEST_CASE("three misses in a row pause and offer; half tempo is a tempo fact with its reason") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.rule.floor = passage.tempi.start;
    PracticeFixture desk(passage);
    missRuns(desk, 3);
    REQUIRE(desk.drill->state() == DrillModel::State::Paused);
    CHECK(desk.drill->pauseKind() == DrillModel::PauseKind::ThreeMisses);
    CHECK(desk.drill->halfTempoText() == "42");
    desk.drill->slower();
    const auto set = desk.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().tempo == Tempo::bpm(42));
    CHECK(set.front().reason == Reason::offer);
    REQUIRE(desk.playUntil(Kind::runBegan));
    CHECK(desk.found.tempo == Tempo::bpm(42));
    CHECK(desk.drill->state() == DrillModel::State::Playing);
}

TEST_CASE("two drops below the start pause and offer; fewer bars ask for the editor and stop") {
    PracticeFixture desk;
    QString wanted;
    QObject::connect(desk.drill.get(), &DrillModel::wantsEdit, [&](const QString& passage, bool shorter) {
        if (shorter) wanted = passage;
    });
    missRuns(desk, 2);
    REQUIRE(desk.drill->state() == DrillModel::State::Paused);
    CHECK(desk.drill->pauseKind() == DrillModel::PauseKind::BelowStart);
    CHECK(desk.standing() == Standing{Tempo::bpm(76), 0});
    desk.drill->wantShorter();
    desk.play(0.2);
    CHECK(wanted.toStdString() == desk.passageId.text());
    CHECK(desk.drill->state() == DrillModel::State::Stopped);
}

TEST_CASE("Return ends an open-ended run clean, and Space ends it missed") {
    Passage passage = PracticeFixture::usual();
    passage.music.bars = 0;
    PracticeFixture desk(passage);
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(7);
    desk.drill->markClean(desk.sound.nowNanos());
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
    PracticeFixture desk;
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(1);
    desk.drill->markClean(desk.sound.nowNanos());
    desk.play(1);
    CHECK(desk.onDisk<RunFact>().empty());
}

TEST_CASE("the bar shown is the part's own, and the beat is the one that can be heard") {
    PracticeFixture desk;
    desk.play(0.5);
    desk.press();
    desk.play(0.05);
    CHECK(desk.drill->beats()->beat() == -1); // rendered, not heard yet
    desk.play(0.1);
    CHECK(desk.drill->beats()->counting());
    CHECK(desk.drill->beats()->beat() == 0);
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(0.12);
    CHECK(desk.drill->beats()->barText() == "41");
    desk.play(60.0 / 84 * 5);
    CHECK(desk.drill->beats()->barText() == "42");
    CHECK(desk.drill->beats()->beat() == 1);
    desk.drill->stop();
    desk.play(0.1);
    CHECK(desk.drill->beats()->beat() == -1);
}

TEST_CASE("a rest is asked for once after 25 minutes of playing, and only while nothing runs") {
    PracticeFixture desk;
    PracticeSettings settings;
    settings.pauseAfterRuns = 0;
    desk.book->record(SettingsFact{settings});
    desk.press();
    desk.play(25 * 60 + 1);
    CHECK_FALSE(desk.drill->restDue());
    desk.drill->stop();
    desk.play(0.5);
    CHECK(desk.drill->restDue());
    desk.drill->dismissRest();
    CHECK_FALSE(desk.drill->restDue());
}

TEST_CASE("in a folder that is only read the drill runs and records nothing") {
    PracticeFixture desk;
    auto second = practice::PracticeBook::open({desk.folder(), test::deskDevice, desk.state()});
    REQUIRE(second);
    practice::PracticeBook& book = *second.value();
    REQUIRE(book.readOnly());
    desk.book->flush(10'000);
    auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound(engine);
    practice::DrillSession session(book, sound, engine, practice::DrillSession::Reading::byHand);
    Passage passage = PracticeFixture::usual();
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

TEST_CASE("runs without the click are journalled as such and leave the standing alone") {
    PracticeFixture desk;
    auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound(engine);
    practice::DrillSession session(*desk.book, sound, engine, practice::DrillSession::Reading::byHand);
    Passage passage = PracticeFixture::usual();
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
