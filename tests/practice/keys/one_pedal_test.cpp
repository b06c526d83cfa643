// SPDX-License-Identifier: GPL-3.0-or-later
// The whole drill with a single pedal, in virtual time with simulated presses.
#include "../drill_fixture.h"
#include "practice/keys/pedal_press.h"

using namespace piolo;
using piolo::practice::DrillControl;
using piolo::practice::PedalAct;
using piolo::practice::PedalPress;
using piolo::test::DrillFixture;
using Kind = engine::Event::Kind;
using State = DrillControl::State;

namespace {

/// The fixture with a pedal.
struct Footed : DrillFixture {
    using DrillFixture::DrillFixture;
    void down() { keep(pedal.down(sound.nowNanos(), control->marksAtOnce())); }
    void up() { keep(pedal.up(sound.nowNanos())); }
    void wait(double seconds) {
        for (int block = 0; block < static_cast<int>(seconds * 100); ++block) {
            step();
            if (pedal.due() && *pedal.due() <= sound.nowNanos()) keep(pedal.pass(sound.nowNanos()));
        }
    }
    void tap() {
        down();
        wait(0.08);
        up();
    }
    void twice() {
        tap();
        wait(0.1);
        tap();
        wait(0.5);
    }
    void hold() {
        down();
        wait(1.0);
        up();
        wait(0.5);
    }
    void startIt() {
        tap();
        wait(0.5);
        REQUIRE(control->state() == State::playing);
    }
    /// The middle of the next run's first bar, as heard.
    void toRun() {
        REQUIRE(playUntil(Kind::runBegan));
        wait(1.0);
    }
    void keep(const practice::PedalPress::Acts& acts) {
        for (const practice::PedalAct& act : acts) control->pedal(act);
    }
    [[nodiscard]] Tempo tempo() const { return standing().tempo; }

    practice::PedalPress pedal;
};

/// A clean run, then the run in which the pedal is pressed.
struct AfterAClean : Footed {
    explicit AfterAClean(bool playOn = false) {
        if (playOn) {
            PracticeSettings settings;
            settings.playOn = true;
            book->record(SettingsFact{settings});
        }
        startIt();
        REQUIRE(playUntil(Kind::runEnded));
        REQUIRE(standing() == Standing{Tempo::bpm(84), 1});
    }
};

const Standing opening{Tempo::bpm(84), 0};
const Standing oneClean{Tempo::bpm(84), 1};
const Standing dropped{Tempo::bpm(80), 0};

} // namespace

TEST_CASE("one pedal: a press starts once it is clear that it is not another kind") {
    Footed fixture;
    fixture.tap();
    CHECK(fixture.control->state() == State::stopped);
    fixture.wait(0.4);
    CHECK(fixture.control->state() == State::playing);
    CHECK(fixture.onDisk<TempoFact>().empty());
}

TEST_CASE("one pedal: a miss is marked at once, at the place that was heard when the pedal went down") {
    AfterAClean fixture;
    fixture.toRun();
    fixture.down();
    fixture.step();
    fixture.step();
    CHECK(fixture.control->feedback() == DrillControl::Feedback::missed); // while the foot is still down
    CHECK(fixture.standing() == dropped);
    fixture.wait(0.1);
    fixture.up();
    fixture.wait(2);
    CHECK(fixture.standing() == dropped);
    CHECK(fixture.onDisk<BackFact>().empty());
    DrillFixture plain;
    plain.press();
    REQUIRE(plain.playUntil(Kind::runEnded));
    REQUIRE(plain.playUntil(Kind::runBegan));
    plain.play(1.0);
    plain.press();
    plain.play(0.1);
    const auto runs = fixture.onDisk<RunFact>();
    const auto others = plain.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    REQUIRE(others.size() == 2);
    CHECK(runs.back().spots == others.back().spots);
}

TEST_CASE("one pedal: held, it stops, and leaves no trace in tempo and streak") {
    SUBCASE("inside a run") {
        AfterAClean fixture;
        fixture.toRun();
        fixture.hold();
        CHECK(fixture.control->state() == State::stopped);
        CHECK(fixture.standing() == oneClean);
        CHECK(fixture.onDisk<BackFact>().size() == 1);
    }
    SUBCASE("playing on: the run is void, as with the key that stops") {
        AfterAClean fixture(true);
        fixture.toRun();
        fixture.hold();
        CHECK(fixture.control->state() == State::stopped);
        CHECK(fixture.standing() == oneClean);
        CHECK(fixture.onDisk<BackFact>().empty());
        const auto runs = fixture.onDisk<RunFact>();
        CHECK(runs.back().mark == Mark::voided);
        CHECK(runs.back().spots.empty());
    }
    SUBCASE("in the breath after a clean run, which stays clean") {
        AfterAClean fixture;
        fixture.wait(0.2);
        fixture.hold();
        CHECK(fixture.control->state() == State::stopped);
        CHECK(fixture.standing() == oneClean);
    }
    SUBCASE("in the first count-in, where there was nothing to mark") {
        Footed fixture;
        fixture.startIt();
        fixture.hold();
        CHECK(fixture.control->state() == State::stopped);
        CHECK(fixture.standing() == opening);
        CHECK(fixture.onDisk<BackFact>().empty());
        CHECK(fixture.onDisk<RunFact>().empty());
    }
    SUBCASE("in a try, which its press ended") {
        Footed fixture;
        fixture.control->begin(RunKind::attempt);
        fixture.toRun();
        fixture.hold();
        CHECK(fixture.control->state() == State::stopped);
        CHECK(fixture.onDisk<RunFact>().size() == 1);
        CHECK(fixture.onDisk<BackFact>().size() == 1);
    }
}

TEST_CASE("one pedal: a double press has the effect of one key that takes back, wherever it comes") {
    // Each fixture is set up twice: once with two presses, once with the key.
    const auto same = [](auto make, auto goTo) {
        auto footed = make();
        auto keyed = make();
        goTo(*footed);
        goTo(*keyed);
        footed->twice();
        keyed->control->takeBack();
        keyed->wait(0.76);
        CHECK(footed->standing() == keyed->standing());
        CHECK(footed->control->state() == keyed->control->state());
        CHECK(footed->control->standing().tempo == keyed->control->standing().tempo);
        return footed->standing();
    };
    const auto clean = [] { return std::make_unique<AfterAClean>(); };
    const auto cleanPlayingOn = [] { return std::make_unique<AfterAClean>(true); };
    const auto fresh = [] {
        auto fixture = std::make_unique<Footed>();
        fixture->startIt();
        return fixture;
    };
    const auto missedIt = [](Footed& fixture) {
        fixture.toRun();
        fixture.control->strike(fixture.sound.nowNanos());
        fixture.wait(0.2);
    };
    SUBCASE("inside a run: the clean one before it goes") {
        CHECK(same(clean, [](Footed& fixture) { fixture.toRun(); }) == opening);
    }
    SUBCASE("inside a run, playing on") {
        CHECK(same(cleanPlayingOn, [](Footed& fixture) { fixture.toRun(); }) == opening);
    }
    SUBCASE("in the breath after a clean run") {
        CHECK(same(clean, [](Footed& fixture) { fixture.wait(0.2); }) == opening);
    }
    SUBCASE("in the gap after a miss: the miss goes, and the row is as before") {
        CHECK(same(clean, missedIt) == oneClean);
    }
    SUBCASE("in a run after a miss") {
        CHECK(same(clean, [&](Footed& fixture) {
                  missedIt(fixture);
                  fixture.toRun();
              }) == oneClean);
    }
    SUBCASE("in the first count-in: nothing is left") {
        CHECK(same(fresh, [](Footed& fixture) { fixture.wait(0.3); }) == opening);
    }
    SUBCASE("in the first run") {
        CHECK(same(fresh, [](Footed& fixture) { fixture.toRun(); }) == opening);
    }
    SUBCASE("while stopped") {
        CHECK(same(clean, [](Footed& fixture) {
                  fixture.control->stop();
                  fixture.wait(0.5);
              }) == opening);
    }
    SUBCASE("while stopped, with a tempo set by hand") {
        CHECK(same(clean, [](Footed& fixture) {
                  fixture.control->stop();
                  fixture.wait(0.5);
                  fixture.control->faster();
              }) == oneClean);
    }
    SUBCASE("with a full row before it: the climb goes") {
        const auto climbed = [] {
            auto fixture = std::make_unique<AfterAClean>();
            for (int run = 2; run <= 5; ++run) REQUIRE(fixture->playUntil(Kind::runEnded));
            REQUIRE(fixture->standing() == Standing{Tempo::bpm(86), 0});
            return fixture;
        };
        CHECK(same(climbed, [](Footed& fixture) { fixture.toRun(); }) == Standing{Tempo::bpm(84), 4});
    }
}

TEST_CASE("one pedal: what two presses took back is reported as taken back, and the click continues") {
    AfterAClean fixture;
    fixture.toRun();
    fixture.twice();
    CHECK(fixture.control->state() == State::playing);
    CHECK(fixture.control->feedback() == DrillControl::Feedback::takenBack);
    REQUIRE(fixture.playUntil(Kind::runEnded));
    CHECK(fixture.found.mark == Mark::clean);
    CHECK(fixture.found.tempo == Tempo::bpm(84));
    CHECK(fixture.standing() == oneClean);
}

TEST_CASE("one pedal: a pause that the first of two presses led to ends with it") {
    Footed fixture;
    fixture.startIt();
    fixture.toRun();
    fixture.tap();
    fixture.wait(0.5);
    fixture.toRun();
    fixture.down(); // the second drop to below the start pauses
    fixture.wait(0.2);
    fixture.up();
    fixture.wait(0.1);
    REQUIRE(fixture.control->state() == State::paused);
    fixture.tap();
    fixture.wait(1);
    CHECK(fixture.control->state() == State::playing);
    CHECK(fixture.standing() == opening); // the first miss is taken back
}

TEST_CASE("one pedal: in a pause a press goes on, two presses say no, held it stops") {
    const auto paused = [](Footed& fixture) {
        PracticeSettings settings;
        settings.pauseAfterRuns = 2;
        fixture.book->record(SettingsFact{settings});
        fixture.startIt();
        REQUIRE(fixture.playUntil(Kind::paused));
        fixture.wait(0.3);
        REQUIRE(fixture.control->state() == State::paused);
    };
    Footed fixture;
    paused(fixture);
    SUBCASE("a press") {
        fixture.tap();
        fixture.wait(1);
        CHECK(fixture.control->state() == State::playing);
        CHECK(fixture.standing() == Standing{Tempo::bpm(84), 2});
    }
    SUBCASE("two") {
        fixture.twice();
        fixture.wait(1);
        CHECK(fixture.control->state() == State::playing);
        CHECK(fixture.onDisk<DoubtFact>().size() == 1);
        CHECK(fixture.standing() == opening);
    }
    SUBCASE("held") {
        fixture.hold();
        CHECK(fixture.control->state() == State::stopped);
        CHECK(fixture.standing() == Standing{Tempo::bpm(84), 2});
        CHECK(fixture.onDisk<DoubtFact>().empty());
    }
}

TEST_CASE("one pedal: holding it while stopped asks for the next passage and starts nothing") {
    Footed fixture;
    int asked = 0;
    QObject::connect(fixture.control.get(), &DrillControl::wantsNext, [&] { ++asked; });
    fixture.hold();
    CHECK(asked == 1);
    CHECK(fixture.control->state() == State::stopped);
    CHECK(fixture.onDisk<TempoFact>().empty());
    fixture.startIt();
    fixture.hold();
    CHECK(fixture.control->state() == State::stopped);
    CHECK(asked == 1);
}

TEST_CASE("a window that hangs between two presses takes back the same") {
    AfterAClean fixture;
    fixture.toRun();
    // Both presses reach the drill before any event of the first one is reported.
    const std::int64_t now = fixture.sound.nowNanos();
    fixture.keep(fixture.pedal.down(now - 200'000'000, true));
    fixture.keep(fixture.pedal.up(now - 120'000'000));
    fixture.keep(fixture.pedal.down(now, true));
    fixture.keep(fixture.pedal.up(now + 80'000'000));
    fixture.wait(1);
    CHECK(fixture.standing() == opening);
    CHECK(fixture.onDisk<BackFact>().size() == 2);
}
