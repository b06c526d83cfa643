// SPDX-License-Identifier: GPL-3.0-or-later
#include "../practice_fixture.h"

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::PracticeFixture;
using Kind = engine::Event::Kind;

TEST_CASE("a try plays one run at the target, is logged separately and does not change the standing") {
    PracticeFixture desk;
    desk.drill->attempt();
    CHECK(desk.drill->apart());
    CHECK(desk.drill->text()->apart() == "a try: changes nothing");
    REQUIRE(desk.playUntil(Kind::stopped));
    CHECK(desk.drill->state() == DrillModel::State::Playing); // its last bar is still audible
    desk.play(0.2);
    CHECK(desk.drill->state() == DrillModel::State::Stopped);
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::attempt);
    CHECK(runs.front().tempo == Tempo::bpm(96));
    CHECK(desk.standing() == Standing{Tempo::bpm(84), 0});
    CHECK(desk.drill->text()->tempo() == "84");
}

TEST_CASE(
    "without the click: run after run at the target, with its own mark, without changing the standing") {
    PracticeFixture desk;
    desk.drill->playSilent();
    CHECK(desk.drill->text()->apart() == "without the click: changes nothing");
    CHECK(desk.drill->text()->tempo() == "96");
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
    CHECK(desk.drill->text()->tempo() == "84");
}

TEST_CASE("the player chooses the stage; the log suggests the next one and says why") {
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
    desk.drill->setStage(1); // once is enough
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
    // The last full streak was at 86; two rungs below is 82, which is below the start: 84.
    CHECK(desk.drill->text()->tempo() == "84");
    CHECK_FALSE(desk.drill->text()->opening().isEmpty());
    desk.press();
    REQUIRE(desk.playUntil(Kind::runBegan));
    CHECK(desk.found.tempo == Tempo::bpm(84));
    const auto set = desk.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().reason == Reason::newDay);
    CHECK(set.front().tempo == Tempo::bpm(84));
}

TEST_CASE("two drops below the start cause a pause with suggestions; fewer bars opens the editor and stops") {
    PracticeFixture desk;
    QString wanted;
    QObject::connect(desk.drill, &DrillModel::wantsEdit, [&](const QString& passage, bool shorter) {
        if (shorter) wanted = passage;
    });
    desk.missRuns(2);
    REQUIRE(desk.drill->state() == DrillModel::State::Paused);
    CHECK(desk.drill->pauseKind() == DrillModel::PauseKind::BelowStart);
    CHECK(desk.standing() == Standing{Tempo::bpm(76), 0});
    desk.drill->wantShorter();
    desk.play(0.2);
    CHECK(wanted.toStdString() == desk.passageId.text());
    CHECK(desk.drill->state() == DrillModel::State::Stopped);
}

TEST_CASE("the bar shown is the part's own, and the beat is the audible one") {
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
