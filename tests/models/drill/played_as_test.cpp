// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/played_as.h"

#include "../practice_fixture.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;
using namespace piolo::models;
using piolo::test::PracticeFixture;
using Kind = engine::Event::Kind;

namespace {

QString textOf(const QVariantList& choices, const QVariant& value) {
    for (const QVariant& entry : choices)
        if (entry.toMap().value("value") == value) return entry.toMap().value("text").toString();
    return {};
}

} // namespace

TEST_CASE("the same speed is felt in eighths from the next run on, and the streak continues") {
    PracticeFixture desk;
    desk.drill->start();
    REQUIRE(desk.playUntil(Kind::runEnded));
    PlayedAs& played = *desk.drill->playedAs();
    played.feel("1/8");
    CHECK(desk.onDisk<FeltBeatFact>().empty()); // not while the click runs
    desk.drill->stop();
    desk.play(0.5);
    REQUIRE(desk.standing() == Standing{Tempo::bpm(84), 1});
    CHECK(played.beat() == "1/4");
    CHECK(textOf(played.beats(), "1/8") == "felt as ♪ = 168");
    CHECK(textOf(played.beats(), "1/2") == "felt as half = 42");
    played.feel("1/8");
    CHECK(played.beat() == "1/8");
    CHECK(desk.standing() == Standing{Tempo::bpm(168), 1});
    CHECK(desk.drill->text()->tempo() == "168");
    CHECK(desk.drill->text()->target() == "192");
    desk.drill->start();
    REQUIRE(desk.playUntil(Kind::runEnded));
    CHECK(desk.found.after == Standing{Tempo::bpm(168), 2});
}

TEST_CASE("a beat in which the steps would not be exact is not offered") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.rule.drop = 3;
    PracticeFixture desk(passage);
    CHECK(textOf(desk.drill->playedAs()->beats(), "1/2").isEmpty());
    CHECK_FALSE(textOf(desk.drill->playedAs()->beats(), "1/8").isEmpty());
}

TEST_CASE("another articulation is recorded at once, shown with the passage, and has a best of its own") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.rule.cleanRuns = 1;
    PracticeFixture desk(passage);
    PlayedAs& played = *desk.drill->playedAs();
    desk.drill->start();
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    CHECK(played.bests().isEmpty());
    played.setArticulation(static_cast<int>(Articulation::slurred));
    played.setRhythm(static_cast<int>(Rhythm::dotted));
    CHECK(played.text() == "all slurred · long and short");
    CHECK(desk.drill->text()->about().endsWith("all slurred · long and short"));
    desk.drill->start();
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    CHECK(played.bests() == "Best: as written 84, all slurred 86");
    CHECK(desk.record().entries.back().articulation == Articulation::slurred);
    played.setArticulation(99);
    CHECK(played.articulation() == static_cast<int>(Articulation::slurred));
}

TEST_CASE("each miss of a search drops, and its first full streak stops the click and has found the tempo") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.rule.cleanRuns = 2;
    PracticeFixture desk(passage);
    for (int press = 0; press < 6; ++press) desk.drill->faster();
    CHECK(desk.drill->text()->tempo() == "90");
    desk.drill->seek();
    CHECK(desk.drill->text()->search() == "Finding your tempo, from 90 down.");
    REQUIRE(desk.playUntil(Kind::runBegan));
    desk.play(0.5);
    desk.press();
    REQUIRE(desk.playUntil(Kind::runEnded));
    CHECK(desk.found.after == Standing{Tempo::bpm(86), 0});
    REQUIRE(desk.playUntil(Kind::runEnded));
    CHECK(desk.drill->state() == DrillModel::State::Playing);
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.play(1);
    CHECK(desk.drill->state() == DrillModel::State::Stopped);
    CHECK(desk.drill->feedback() == DrillModel::Feedback::Found);
    CHECK(desk.drill->text()->search() == "Found today: 86, from 90 down.");
    const auto tempi = desk.onDisk<TempoFact>();
    REQUIRE(tempi.size() == 1); // what was set by hand is what was named
    CHECK(tempi.front().reason == Reason::named);
    CHECK(tempi.front().tempo == Tempo::bpm(90));
    desk.drill->start(); // continues like any drill
    REQUIRE(desk.playUntil(Kind::runEnded));
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.play(1);
    CHECK(desk.drill->state() == DrillModel::State::Playing);
}

TEST_CASE("at half tempo, runs are aside: logged separately, without changing the standing") {
    PracticeFixture desk;
    desk.drill->playAtHalf();
    CHECK(desk.drill->text()->tempo() == "42");
    CHECK(desk.drill->text()->apart() == "aside: changes nothing");
    REQUIRE(desk.playUntil(Kind::runEnded));
    desk.drill->stop();
    desk.play(0.5);
    const auto runs = desk.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::aside);
    CHECK(runs.front().tempo == Tempo::bpm(42));
    CHECK(desk.standing() == Standing{Tempo::bpm(84), 0});
    CHECK(desk.drill->text()->tempo() == "84");
}

TEST_CASE(
    "a gentle rule is gentle in the drill: at the target, one miss only ends the streak, the second drops") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.start = passage.tempi.rule.target;
    passage.tempi.rule.gentle = true;
    PracticeFixture desk(passage);
    desk.drill->start();
    const auto missOne = [&] {
        REQUIRE(desk.playUntil(Kind::runBegan));
        desk.play(0.5);
        desk.press();
        REQUIRE(desk.playUntil(Kind::runEnded));
    };
    missOne();
    CHECK(desk.found.after == Standing{Tempo::bpm(96), 0, true});
    missOne();
    CHECK(desk.found.after == Standing{Tempo::bpm(94), 0});
    desk.drill->stop();
    desk.play(0.5);
    CHECK(desk.standing() == Standing{Tempo::bpm(94), 0});
    CHECK(desk.drill->text()->about().contains("gentle near the target"));
}
