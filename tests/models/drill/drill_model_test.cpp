// SPDX-License-Identifier: GPL-3.0-or-later
#include "../practice_fixture.h"

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::PracticeFixture;
using Kind = engine::Event::Kind;

TEST_CASE("a try plays one run at the target, is logged separately and does not change the standing") {
    PracticeFixture fixture;
    fixture.drill->attempt();
    CHECK(fixture.drill->apart());
    CHECK(fixture.drill->text()->apart() == "a try: changes nothing");
    REQUIRE(fixture.playUntil(Kind::stopped));
    CHECK(fixture.drill->state() == DrillModel::State::Playing); // its last bar is still audible
    fixture.play(0.2);
    CHECK(fixture.drill->state() == DrillModel::State::Stopped);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::attempt);
    CHECK(runs.front().tempo == Tempo::bpm(96));
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 0});
    CHECK(fixture.drill->text()->tempo() == "84");
}

TEST_CASE(
    "without the click: run after run at the target, with its own mark, without changing the standing") {
    PracticeFixture fixture;
    fixture.drill->playSilent();
    CHECK(fixture.drill->text()->apart() == "without the click: changes nothing");
    CHECK(fixture.drill->text()->tempo() == "96");
    REQUIRE(fixture.playUntil(Kind::runEnded));
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(0.5); // heard 100 ms late
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.drill->stop();
    fixture.play(0.5);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    CHECK(runs[0].kind == RunKind::silent);
    CHECK(runs[0].mark == Mark::clean);
    CHECK(runs[1].mark == Mark::missed);
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 0});
    CHECK_FALSE(fixture.drill->apart());
    CHECK(fixture.drill->text()->tempo() == "84");
}

TEST_CASE("the player chooses the stage; the log suggests the next one and says why") {
    PracticeFixture fixture;
    auto* const stages = fixture.drill->stages();
    CHECK(stages->stage() == 0);
    CHECK(stages->evidence() == "Next: a full streak at the target.");
    CHECK(stages->proposed() == "");
    fixture.drill->setStage(2);
    CHECK(stages->stage() == 2);
    CHECK(stages->evidence() == "Clean in a row without the click, on one day: 0 of 3.");
    fixture.drill->playSilent();
    for (int run = 0; run < 3; ++run) REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.drill->stop();
    fixture.play(0.5);
    CHECK(stages->evidence() == "Clean in a row without the click, on one day: 3 of 3.");
    CHECK(stages->proposed() == "in context");
    fixture.drill->setStage(1);
    fixture.drill->setStage(1); // once is enough
    fixture.drill->setStage(9);
    CHECK(fixture.onDisk<StageFact>().size() == 2);
    CHECK(stages->stage() == 1);
}

TEST_CASE("a new day opens lower, and says so in the log with its reason") {
    PracticeFixture fixture;
    fixture.press();
    for (int run = 0; run < 11; ++run) REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.drill->stop();
    fixture.play(0.5);
    CHECK(fixture.standing() == Standing{Tempo::bpm(88), 1});
    fixture.clock->base += 86'400'000;
    fixture.drill->open(QString::fromStdString(fixture.passageId.text()));
    fixture.drill->dismissRest();
    emit fixture.book->changed({});
    // The last full streak was at 86; two rungs below is 82, which is below the start: 84.
    CHECK(fixture.drill->text()->tempo() == "84");
    CHECK_FALSE(fixture.drill->text()->opening().isEmpty());
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    CHECK(fixture.found.tempo == Tempo::bpm(84));
    const auto set = fixture.onDisk<TempoFact>();
    REQUIRE(set.size() == 1);
    CHECK(set.front().reason == Reason::newDay);
    CHECK(set.front().tempo == Tempo::bpm(84));
}

TEST_CASE("two drops below the start cause a pause with suggestions; fewer bars opens the editor and stops") {
    PracticeFixture fixture;
    QString wanted;
    QObject::connect(fixture.drill, &DrillModel::wantsEdit, [&](const QString& passage, bool shorter) {
        if (shorter) wanted = passage;
    });
    fixture.missRuns(2);
    REQUIRE(fixture.drill->state() == DrillModel::State::Paused);
    CHECK(fixture.drill->pauseKind() == DrillModel::PauseKind::BelowStart);
    CHECK(fixture.standing() == Standing{Tempo::bpm(76), 0});
    fixture.drill->wantShorter();
    fixture.play(0.2);
    CHECK(wanted.toStdString() == fixture.passageId.text());
    CHECK(fixture.drill->state() == DrillModel::State::Stopped);
}

TEST_CASE("the bar shown is the part's own, and the beat is the audible one") {
    PracticeFixture fixture;
    fixture.play(0.5);
    fixture.press();
    fixture.play(0.05);
    CHECK(fixture.drill->beats()->beat() == -1); // rendered, not heard yet
    fixture.play(0.1);
    CHECK(fixture.drill->beats()->counting());
    CHECK(fixture.drill->beats()->beat() == 0);
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(0.12);
    CHECK(fixture.drill->beats()->barText() == "41");
    fixture.play(60.0 / 84 * 5);
    CHECK(fixture.drill->beats()->barText() == "42");
    CHECK(fixture.drill->beats()->beat() == 1);
    fixture.drill->stop();
    fixture.play(0.1);
    CHECK(fixture.drill->beats()->beat() == -1);
}
