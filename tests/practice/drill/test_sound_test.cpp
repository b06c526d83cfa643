// SPDX-License-Identifier: GPL-3.0-or-later
// The bar that lets a player hear a change of the sound.
#include "../drill_fixture.h"

#include "practice/drill/test_bar.h"
#include "practice/drill/test_sound.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace piolo;
using engine::Layer;
using practice::TestSound;
using Kind = engine::Event::Kind;

namespace {

struct TestSoundFixture : test::DrillFixture {
    bool mayPlay = true;
    TestSound heard{*session, [this] { return mayPlay; }};

    /// How loud the loudest sample of the next seconds is.
    float peak(double seconds) {
        std::vector<float> block(test::VirtualSound::rate / 100);
        float most = 0;
        for (int turn = 0; turn < static_cast<int>(seconds * 100); ++turn) {
            engine->render(block);
            session->poll();
            for (const float value : block) most = std::max(most, std::abs(value));
        }
        return most;
    }
    [[nodiscard]] std::vector<engine::Event> all(Kind kind) const {
        std::vector<engine::Event> events;
        for (const auto& note : notes)
            if (note.event.kind == kind) events.push_back(note.event);
        return events;
    }
    [[nodiscard]] std::vector<Layer> layers() const {
        std::vector<Layer> sounding;
        for (const auto& pulse : all(Kind::pulse))
            if (pulse.sounds) sounding.push_back(pulse.layer);
        return sounding;
    }
    void settle() {
        QTest::qWait(TestSound::settleMillis + 100);
        play(0.05);
    }
    float peakOf(Layer layer, const engine::Mix& mix) {
        session->setMix(mix);
        session->play(practice::testBar(layer));
        return peak(5);
    }
};

const std::vector<Layer> bar{Layer::downbeat, Layer::subdivision, Layer::beat, Layer::subdivision,
                             Layer::group,    Layer::subdivision, Layer::beat, Layer::subdivision};

} // namespace

TEST_CASE_FIXTURE(TestSoundFixture, "a test bar has a click of every kind") {
    session->play(practice::testBar(Layer::beat));
    play(3);
    CHECK(layers() == bar);
    CHECK(all(Kind::playbackEnded).size() == 1);
    CHECK(peak(1) == 0);
}

TEST_CASE_FIXTURE(TestSoundFixture, "for the count-in, a bar of it comes first") {
    session->play(practice::testBar(Layer::countIn));
    play(5);
    std::vector<Layer> wanted(4, Layer::countIn);
    wanted.insert(wanted.end(), bar.begin(), bar.end());
    CHECK(layers() == wanted);
}

TEST_CASE_FIXTURE(TestSoundFixture, "for cues and notes, these sound, and no louder than their level") {
    engine::Mix mix;
    mix.muted.fill(true);
    CHECK(peakOf(Layer::beat, mix) == 0);
    CHECK(peakOf(Layer::cue, mix) == 0);
    CHECK(peakOf(Layer::playback, mix) == 0);
    for (const Layer layer : {Layer::cue, Layer::playback}) {
        mix.muted[static_cast<std::size_t>(layer)] = false;
        mix.layerLevel[static_cast<std::size_t>(layer)] = 1;
        const float full = peakOf(layer, mix);
        CHECK(full > 0.01F);
        mix.layerLevel[static_cast<std::size_t>(layer)] = 0.5F;
        CHECK(peakOf(layer, mix) == doctest::Approx(full / 2).epsilon(0.02));
        mix.muted[static_cast<std::size_t>(layer)] = true;
    }
}

TEST_CASE_FIXTURE(TestSoundFixture, "the bar is never louder than the volume allows") {
    engine::Mix mix;
    for (const float level : {0.0F, 0.05F, 0.35F, 1.0F}) {
        mix.level = level;
        CHECK(peakOf(Layer::beat, mix) <= level);
    }
}

TEST_CASE_FIXTURE(TestSoundFixture, "a row of changes is heard once, and as the last of them is") {
    heard.want(Layer::beat);
    heard.want(Layer::beat);
    heard.want(Layer::countIn);
    CHECK(all(Kind::playbackBegan).empty());
    settle();
    play(5);
    CHECK(all(Kind::playbackBegan).size() == 1);
    CHECK(layers().front() == Layer::countIn);
    settle();
    CHECK(all(Kind::playbackBegan).size() == 1);
}

TEST_CASE_FIXTURE(TestSoundFixture, "nothing is tested while the click runs or anything else is played") {
    press();
    play(1);
    heard.want(Layer::beat);
    settle();
    CHECK(all(Kind::playbackBegan).empty());
    control->stop();
    play(1);
    mayPlay = false;
    heard.want(Layer::beat);
    settle();
    CHECK(all(Kind::playbackBegan).empty());
    mayPlay = true;
    heard.want(Layer::beat);
    settle();
    CHECK(all(Kind::playbackBegan).size() == 1);
}

TEST_CASE_FIXTURE(TestSoundFixture, "the drill ends the test, which leaves no trace in the log") {
    const auto facts = book->notebook().factCount();
    heard.want(Layer::beat);
    settle();
    CHECK(control->state() == practice::DrillControl::State::stopped);
    press();
    play(0.3);
    CHECK(all(Kind::playbackEnded).size() == 1);
    CHECK(all(Kind::started).size() == 1);
    control->stop();
    play(1);
    CHECK(book->notebook().factCount() - facts == onDisk<RunFact>().size() + onDisk<TempoFact>().size());
}
