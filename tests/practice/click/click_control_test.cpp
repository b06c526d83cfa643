// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/click/click_control.h"

#include "../drill_fixture.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::practice;
using piolo::test::DrillFixture;
using Kind = engine::Event::Kind;

namespace {

/// A click beside a drill, wired as in the window.
struct ClickFixture : DrillFixture {
    ClickFixture() {
        QObject::connect(&click, &ClickControl::starting, control.get(), &DrillControl::stop);
        QObject::connect(&click, &ClickControl::pulsed,
                         [this](const engine::Event& pulse) { heard.push_back(pulse); });
        QObject::connect(&click, &ClickControl::turned, [this](const engine::ClickPlan& plan) {
            turns.push_back({heard.size(), plan});
        });
        facts = book->notebook().factCount();
    }
    void listen(double seconds) {
        for (int block = 0; block < static_cast<int>(seconds * 100); ++block) {
            step();
            click.tick();
        }
    }
    /// The samples of the pulses that the engine decided.
    [[nodiscard]] std::vector<std::uint64_t> pulses(std::size_t from = 0) const {
        std::vector<std::uint64_t> samples;
        for (const auto& note : notes)
            if (note.event.kind == Kind::pulse) samples.push_back(note.event.sample);
        samples.erase(samples.begin(), samples.begin() + static_cast<std::ptrdiff_t>(from));
        return samples;
    }

    ClickControl click{sound, *session};
    std::vector<engine::Event> heard;
    std::vector<std::pair<std::size_t, engine::ClickPlan>> turns; ///< after how many pulses, and to what
    std::size_t facts = 0;
};

} // namespace

TEST_CASE_FIXTURE(ClickFixture, "just a click sounds and stops, and no fact is written") {
    CHECK_FALSE(click.sounds());
    click.setTempo(Tempo::bpm(120));
    click.start();
    CHECK(click.sounds());
    listen(2.05);
    REQUIRE(pulses().size() == 5);
    for (std::size_t i = 0; i < 5; ++i) CHECK(pulses()[i] == i * 24'000);
    CHECK(heard.size() == 4); // 100 ms later
    click.stop();
    CHECK_FALSE(click.sounds());
    listen(2);
    CHECK(pulses().size() == 5);
    CHECK(heard.size() == 4);
    CHECK(book->notebook().factCount() == facts);
    CHECK(onDisk<RunFact>().empty());
    CHECK(onDisk<TempoFact>().empty());
}

TEST_CASE_FIXTURE(ClickFixture, "it goes on through changes of tempo, subdivision and meter, beat by beat") {
    click.setTempo(Tempo::bpm(120));
    click.start();
    listen(1.1); // in the third beat
    click.setTempo(Tempo::bpm(150));
    listen(1);
    click.setSubdivision(2);
    listen(0.5);
    click.setMeter(Meter::parse("3/4", "", "").value());
    listen(2);
    const auto at = pulses();
    REQUIRE(at.size() > 14);
    const std::vector<std::uint64_t> wanted{0,       24'000,  48'000,  72'000,  91'200,
                                            110'400, 120'000, 129'600, 139'200, 148'800};
    for (std::size_t i = 0; i < wanted.size(); ++i) CHECK(at[i] == wanted[i]);
    REQUIRE(turns.size() == 4);
    CHECK(turns[0].first == 0);
    CHECK(turns[1].first == 3); // the new tempo from the fourth beat on
    CHECK(turns[2].second.subdivision == 2);
    CHECK(turns[3].second.beatsPerBar == 3);
    CHECK(heard[turns[3].first].beat == 0);
    CHECK(heard[turns[3].first].part == 0);
    CHECK(heard[turns[3].first].layer == engine::Layer::downbeat);
}

TEST_CASE_FIXTURE(ClickFixture, "a drill that starts ends it at the same sample, and it ends a drill") {
    click.start();
    listen(1);
    control->begin(RunKind::run);
    listen(0.2);
    CHECK_FALSE(click.sounds());
    CHECK(control->state() == DrillControl::State::playing);
    click.setTempo(Tempo::bpm(200)); // a late word to the click that has ended
    click.start();
    listen(0.5);
    CHECK(click.sounds());
    CHECK(control->state() == DrillControl::State::stopped);
    const auto before = pulses().size();
    listen(3);
    CHECK(pulses(before).size() == 10);
}

TEST_CASE_FIXTURE(ClickFixture,
                  "the pulses of a drill are not shown as those of the click, nor the other way") {
    std::size_t drilled = 0;
    QObject::connect(control.get(), &DrillControl::pulsed, [&] { ++drilled; });
    click.start();
    listen(2);
    CHECK(drilled == 0);
    const auto clicked = heard.size();
    control->begin(RunKind::run);
    listen(4);
    CHECK(drilled > 0);
    CHECK(heard.size() <= clicked + 1);
}

TEST_CASE_FIXTURE(ClickFixture, "taps are the tempo, in silence and while it sounds") {
    click.tap(1'000'000'000);
    CHECK(click.taps() == 1);
    CHECK(click.tempo() == Tempo::bpm(72));
    for (int tap = 1; tap < 4; ++tap) click.tap(1'000'000'000 + tap * 600'000'000LL);
    CHECK(click.tempo() == Tempo::bpm(100));
    CHECK_FALSE(click.sounds());
    click.start();
    listen(0.1);
    for (int tap = 0; tap < 4; ++tap) click.tap(9'000'000'000 + tap * 500'000'000LL);
    CHECK(click.tempo() == Tempo::bpm(120));
    listen(2);
    CHECK(pulses()[1] == 28'800);
    CHECK(pulses()[2] == 28'800 + 24'000);
    click.nudge(1);
    CHECK(click.taps() == 0);
}

TEST_CASE_FIXTURE(ClickFixture, "a nudge goes to whole numbers and stays in range") {
    click.setTempo(Tempo::clampedThousandths(84'500));
    click.nudge(1);
    CHECK(click.tempo() == Tempo::bpm(85));
    click.setTempo(Tempo::clampedThousandths(84'500));
    click.nudge(-1);
    CHECK(click.tempo() == Tempo::bpm(84));
    click.nudge(5);
    CHECK(click.tempo() == Tempo::bpm(89));
    click.setTempo(Tempo::bpm(398));
    click.nudge(5);
    CHECK(click.tempo() == Tempo::bpm(400));
    click.setTempo(Tempo::bpm(12));
    click.nudge(-5);
    CHECK(click.tempo() == Tempo::bpm(10));
}

TEST_CASE_FIXTURE(ClickFixture, "the single pedal starts it, taps while it sounds, and stops it when held") {
    constexpr std::int64_t second = 1'000'000'000;
    click.setTempo(Tempo::bpm(72));
    click.pedal({PedalAct::Kind::mark, second, false});
    CHECK(click.sounds());
    CHECK(click.tempo() == Tempo::bpm(72)); // the start is not a tap
    click.pedal({PedalAct::Kind::mark, 10 * second, false});
    CHECK(click.tempo() == Tempo::bpm(72));
    click.pedal({PedalAct::Kind::mark, 10 * second + second / 2, false});
    CHECK(click.tempo() == Tempo::bpm(120));
    click.pedal({PedalAct::Kind::twice, 11 * second, true}); // quick taps come as doubles
    CHECK(click.tempo() == Tempo::bpm(120));
    CHECK(click.taps() == 3);
    CHECK(click.sounds());
    click.pedal({PedalAct::Kind::held, 20 * second, true});
    CHECK_FALSE(click.sounds());
}
