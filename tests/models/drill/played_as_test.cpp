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
    PracticeFixture fixture;
    fixture.drill->start();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    PlayedAs& played = *fixture.drill->playedAs();
    played.feel("1/8");
    CHECK(fixture.onDisk<FeltBeatFact>().empty()); // not while the click runs
    fixture.drill->stop();
    fixture.play(0.5);
    REQUIRE(fixture.standing() == Standing{Tempo::bpm(84), 1});
    CHECK(played.beat() == "1/4");
    CHECK(textOf(played.beats(), "1/8") == "felt as ♪ = 168");
    CHECK(textOf(played.beats(), "1/2") == "felt as half = 42");
    played.feel("1/8");
    CHECK(played.beat() == "1/8");
    CHECK(fixture.standing() == Standing{Tempo::bpm(168), 1});
    CHECK(fixture.drill->text()->tempo() == "168");
    CHECK(fixture.drill->text()->target() == "192");
    fixture.drill->start();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    CHECK(fixture.found.after == Standing{Tempo::bpm(168), 2});
}

TEST_CASE("a beat in which the steps would not be exact is not offered") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.rule.drop = 3;
    PracticeFixture fixture(passage);
    CHECK(textOf(fixture.drill->playedAs()->beats(), "1/2").isEmpty());
    CHECK_FALSE(textOf(fixture.drill->playedAs()->beats(), "1/8").isEmpty());
}

TEST_CASE("another articulation is recorded at once, shown with the passage, and has a best of its own") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.rule.cleanRuns = 1;
    PracticeFixture fixture(passage);
    PlayedAs& played = *fixture.drill->playedAs();
    fixture.drill->start();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.drill->stop();
    fixture.play(0.5);
    CHECK(played.bests().isEmpty());
    played.setArticulation(static_cast<int>(Articulation::slurred));
    played.setRhythm(static_cast<int>(Rhythm::dotted));
    CHECK(played.text() == "all slurred · long and short");
    CHECK(fixture.drill->text()->about().endsWith("all slurred · long and short"));
    fixture.drill->start();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.drill->stop();
    fixture.play(0.5);
    CHECK(played.bests() == "Best: as written 84, all slurred 86");
    CHECK(fixture.record().entries.back().articulation == Articulation::slurred);
    played.setArticulation(99);
    CHECK(played.articulation() == static_cast<int>(Articulation::slurred));
}

TEST_CASE("each miss of a search drops, and its first full streak stops the click and has found the tempo") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.rule.cleanRuns = 2;
    PracticeFixture fixture(passage);
    for (int press = 0; press < 6; ++press) fixture.drill->faster();
    CHECK(fixture.drill->text()->tempo() == "90");
    fixture.drill->seek();
    CHECK(fixture.drill->text()->search() == "Finding your tempo, from 90 down.");
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(0.5);
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runEnded));
    CHECK(fixture.found.after == Standing{Tempo::bpm(86), 0});
    REQUIRE(fixture.playUntil(Kind::runEnded));
    CHECK(fixture.drill->state() == DrillModel::State::Playing);
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.play(1);
    CHECK(fixture.drill->state() == DrillModel::State::Stopped);
    CHECK(fixture.drill->feedback() == DrillModel::Feedback::Found);
    CHECK(fixture.drill->text()->search() == "Found today: 86, from 90 down.");
    const auto tempi = fixture.onDisk<TempoFact>();
    REQUIRE(tempi.size() == 1); // what was set by hand is what was named
    CHECK(tempi.front().reason == Reason::named);
    CHECK(tempi.front().tempo == Tempo::bpm(90));
    fixture.drill->start(); // continues like any drill
    REQUIRE(fixture.playUntil(Kind::runEnded));
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.play(1);
    CHECK(fixture.drill->state() == DrillModel::State::Playing);
}

TEST_CASE("at half tempo, runs are aside: logged separately, without changing the standing") {
    PracticeFixture fixture;
    fixture.drill->playAtHalf();
    CHECK(fixture.drill->text()->tempo() == "42");
    CHECK(fixture.drill->text()->apart() == "aside: changes nothing");
    REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.drill->stop();
    fixture.play(0.5);
    const auto runs = fixture.onDisk<RunFact>();
    REQUIRE(runs.size() == 1);
    CHECK(runs.front().kind == RunKind::aside);
    CHECK(runs.front().tempo == Tempo::bpm(42));
    CHECK(fixture.standing() == Standing{Tempo::bpm(84), 0});
    CHECK(fixture.drill->text()->tempo() == "84");
}

TEST_CASE(
    "a gentle rule is gentle in the drill: at the target, one miss only ends the streak, the second drops") {
    Passage passage = PracticeFixture::usual();
    passage.tempi.start = passage.tempi.rule.target;
    passage.tempi.rule.gentle = true;
    PracticeFixture fixture(passage);
    fixture.drill->start();
    const auto missOne = [&] {
        REQUIRE(fixture.playUntil(Kind::runBegan));
        fixture.play(0.5);
        fixture.press();
        REQUIRE(fixture.playUntil(Kind::runEnded));
    };
    missOne();
    CHECK(fixture.found.after == Standing{Tempo::bpm(96), 0, true});
    missOne();
    CHECK(fixture.found.after == Standing{Tempo::bpm(94), 0});
    fixture.drill->stop();
    fixture.play(0.5);
    CHECK(fixture.standing() == Standing{Tempo::bpm(94), 0});
    CHECK(fixture.drill->text()->about().contains("gentle near the target"));
}
