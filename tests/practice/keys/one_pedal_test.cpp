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
    Footed desk;
    desk.tap();
    CHECK(desk.control->state() == State::stopped);
    desk.wait(0.4);
    CHECK(desk.control->state() == State::playing);
    CHECK(desk.onDisk<TempoFact>().empty());
}

TEST_CASE("one pedal: a miss is marked at once, at the place that was heard when the pedal went down") {
    AfterAClean desk;
    desk.toRun();
    desk.down();
    desk.step();
    desk.step();
    CHECK(desk.control->feedback() == DrillControl::Feedback::missed); // while the foot is still down
    CHECK(desk.standing() == dropped);
    desk.wait(0.1);
    desk.up();
    desk.wait(2);
    CHECK(desk.standing() == dropped);
    CHECK(desk.onDisk<BackFact>().empty());
    DrillFixture plain;
    plain.press();
    REQUIRE(plain.playUntil(Kind::runEnded));
    REQUIRE(plain.playUntil(Kind::runBegan));
    plain.play(1.0);
    plain.press();
    plain.play(0.1);
    const auto runs = desk.onDisk<RunFact>();
    const auto others = plain.onDisk<RunFact>();
    REQUIRE(runs.size() == 2);
    REQUIRE(others.size() == 2);
    CHECK(runs.back().spots == others.back().spots);
}

TEST_CASE("one pedal: held, it stops, and leaves no trace in tempo and streak") {
    SUBCASE("inside a run") {
        AfterAClean desk;
        desk.toRun();
        desk.hold();
        CHECK(desk.control->state() == State::stopped);
        CHECK(desk.standing() == oneClean);
        CHECK(desk.onDisk<BackFact>().size() == 1);
    }
    SUBCASE("playing on: the run is void, as with the key that stops") {
        AfterAClean desk(true);
        desk.toRun();
        desk.hold();
        CHECK(desk.control->state() == State::stopped);
        CHECK(desk.standing() == oneClean);
        CHECK(desk.onDisk<BackFact>().empty());
        const auto runs = desk.onDisk<RunFact>();
        CHECK(runs.back().mark == Mark::voided);
        CHECK(runs.back().spots.empty());
    }
    SUBCASE("in the breath after a clean run, which stays clean") {
        AfterAClean desk;
        desk.wait(0.2);
        desk.hold();
        CHECK(desk.control->state() == State::stopped);
        CHECK(desk.standing() == oneClean);
    }
    SUBCASE("in the first count-in, where there was nothing to mark") {
        Footed desk;
        desk.startIt();
        desk.hold();
        CHECK(desk.control->state() == State::stopped);
        CHECK(desk.standing() == opening);
        CHECK(desk.onDisk<BackFact>().empty());
        CHECK(desk.onDisk<RunFact>().empty());
    }
    SUBCASE("in a try, which its press ended") {
        Footed desk;
        desk.control->begin(RunKind::attempt);
        desk.toRun();
        desk.hold();
        CHECK(desk.control->state() == State::stopped);
        CHECK(desk.onDisk<RunFact>().size() == 1);
        CHECK(desk.onDisk<BackFact>().size() == 1);
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
        auto desk = std::make_unique<Footed>();
        desk->startIt();
        return desk;
    };
    const auto missedIt = [](Footed& desk) {
        desk.toRun();
        desk.control->strike(desk.sound.nowNanos());
        desk.wait(0.2);
    };
    SUBCASE("inside a run: the clean one before it goes") {
        CHECK(same(clean, [](Footed& desk) { desk.toRun(); }) == opening);
    }
    SUBCASE("inside a run, playing on") {
        CHECK(same(cleanPlayingOn, [](Footed& desk) { desk.toRun(); }) == opening);
    }
    SUBCASE("in the breath after a clean run") {
        CHECK(same(clean, [](Footed& desk) { desk.wait(0.2); }) == opening);
    }
    SUBCASE("in the gap after a miss: the miss goes, and the row is as before") {
        CHECK(same(clean, missedIt) == oneClean);
    }
    SUBCASE("in a run after a miss") {
        CHECK(same(clean, [&](Footed& desk) {
                  missedIt(desk);
                  desk.toRun();
              }) == oneClean);
    }
    SUBCASE("in the first count-in: nothing is left") {
        CHECK(same(fresh, [](Footed& desk) { desk.wait(0.3); }) == opening);
    }
    SUBCASE("in the first run") {
        CHECK(same(fresh, [](Footed& desk) { desk.toRun(); }) == opening);
    }
    SUBCASE("while stopped") {
        CHECK(same(clean, [](Footed& desk) {
                  desk.control->stop();
                  desk.wait(0.5);
              }) == opening);
    }
    SUBCASE("while stopped, with a tempo set by hand") {
        CHECK(same(clean, [](Footed& desk) {
                  desk.control->stop();
                  desk.wait(0.5);
                  desk.control->faster();
              }) == oneClean);
    }
    SUBCASE("with a full row before it: the climb goes") {
        const auto climbed = [] {
            auto desk = std::make_unique<AfterAClean>();
            for (int run = 2; run <= 5; ++run) REQUIRE(desk->playUntil(Kind::runEnded));
            REQUIRE(desk->standing() == Standing{Tempo::bpm(86), 0});
            return desk;
        };
        CHECK(same(climbed, [](Footed& desk) { desk.toRun(); }) == Standing{Tempo::bpm(84), 4});
    }
}

TEST_CASE("one pedal: what two presses took back is reported as taken back, and the click continues") {
    AfterAClean desk;
    desk.toRun();
    desk.twice();
    CHECK(desk.control->state() == State::playing);
    CHECK(desk.control->feedback() == DrillControl::Feedback::takenBack);
    REQUIRE(desk.playUntil(Kind::runEnded));
    CHECK(desk.found.mark == Mark::clean);
    CHECK(desk.found.tempo == Tempo::bpm(84));
    CHECK(desk.standing() == oneClean);
}

TEST_CASE("one pedal: a pause that the first of two presses led to ends with it") {
    Footed desk;
    desk.startIt();
    desk.toRun();
    desk.tap();
    desk.wait(0.5);
    desk.toRun();
    desk.down(); // the second drop to below the start pauses
    desk.wait(0.2);
    desk.up();
    desk.wait(0.1);
    REQUIRE(desk.control->state() == State::paused);
    desk.tap();
    desk.wait(1);
    CHECK(desk.control->state() == State::playing);
    CHECK(desk.standing() == opening); // the first miss is taken back
}

TEST_CASE("one pedal: in a pause a press goes on, two presses say no, held it stops") {
    const auto paused = [](Footed& desk) {
        PracticeSettings settings;
        settings.pauseAfterRuns = 2;
        desk.book->record(SettingsFact{settings});
        desk.startIt();
        REQUIRE(desk.playUntil(Kind::paused));
        desk.wait(0.3);
        REQUIRE(desk.control->state() == State::paused);
    };
    Footed desk;
    paused(desk);
    SUBCASE("a press") {
        desk.tap();
        desk.wait(1);
        CHECK(desk.control->state() == State::playing);
        CHECK(desk.standing() == Standing{Tempo::bpm(84), 2});
    }
    SUBCASE("two") {
        desk.twice();
        desk.wait(1);
        CHECK(desk.control->state() == State::playing);
        CHECK(desk.onDisk<DoubtFact>().size() == 1);
        CHECK(desk.standing() == opening);
    }
    SUBCASE("held") {
        desk.hold();
        CHECK(desk.control->state() == State::stopped);
        CHECK(desk.standing() == Standing{Tempo::bpm(84), 2});
        CHECK(desk.onDisk<DoubtFact>().empty());
    }
}

TEST_CASE("one pedal: holding it while stopped asks for the next passage and starts nothing") {
    Footed desk;
    int asked = 0;
    QObject::connect(desk.control.get(), &DrillControl::wantsNext, [&] { ++asked; });
    desk.hold();
    CHECK(asked == 1);
    CHECK(desk.control->state() == State::stopped);
    CHECK(desk.onDisk<TempoFact>().empty());
    desk.startIt();
    desk.hold();
    CHECK(desk.control->state() == State::stopped);
    CHECK(asked == 1);
}

TEST_CASE("a window that hangs between two presses takes back the same") {
    AfterAClean desk;
    desk.toRun();
    // Both presses reach the drill before any event of the first one is reported.
    const std::int64_t now = desk.sound.nowNanos();
    desk.keep(desk.pedal.down(now - 200'000'000, true));
    desk.keep(desk.pedal.up(now - 120'000'000));
    desk.keep(desk.pedal.down(now, true));
    desk.keep(desk.pedal.up(now + 80'000'000));
    desk.wait(1);
    CHECK(desk.standing() == opening);
    CHECK(desk.onDisk<BackFact>().size() == 2);
}
