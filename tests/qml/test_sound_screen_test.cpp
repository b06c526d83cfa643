// SPDX-License-Identifier: GPL-3.0-or-later
// A change of voice or volume is heard, by keys and by mouse.
#include "screen_fixture.h"

#include <doctest/doctest.h>

#include <QTest>

using namespace piolo;
using Kind = engine::Event::Kind;

namespace {

struct SoundScreen : test::ScreenFixture {
    SoundScreen() {
        QObject::connect(&room().session(), &practice::DrillSession::noted,
                         [this](const practice::DrillNote& note) {
                             if (note.event.kind == Kind::playbackBegan) ++tests;
                         });
        open("settings");
    }
    void settle() {
        QTest::qWait(practice::TestSound::settleMillis + 100);
        play(0.05);
    }
    [[nodiscard]] models::SoundSettings& settings() { return *room().settings()->sound(); }
    int tests = 0;
};

} // namespace

TEST_CASE_FIXTURE(SoundScreen, "the volume moved by keys and by mouse is heard once it rests") {
    CHECK(settings().volume() == doctest::Approx(0.35));
    press("volume", Qt::Key_Right);
    press("volume", Qt::Key_Right);
    CHECK(settings().volume() == doctest::Approx(0.45));
    CHECK(settings().mix().level == doctest::Approx(0.45));
    settle();
    CHECK(tests == 1);
    click("volume");
    CHECK(settings().volume() == doctest::Approx(0.5));
    settle();
    CHECK(tests == 2);
    settle();
    CHECK(tests == 2);
}

TEST_CASE_FIXTURE(SoundScreen, "another voice is heard") {
    QQuickItem* const voice = find("voice");
    REQUIRE(voice != nullptr);
    QMetaObject::invokeMethod(voice, "takeKeys");
    QTest::keyClick(&window(), Qt::Key_Down);
    CHECK(settings().voice() == "dry");
    settle();
    CHECK(tests == 1);
}

TEST_CASE_FIXTURE(SoundScreen, "the levels of the parts are under More, and a change of one is heard") {
    CHECK(find("level-1") == nullptr);
    press("moreLevels-head", Qt::Key_Return);
    CHECK(find("level-0") == nullptr); // the volume has its own line
    REQUIRE(find("level-4") != nullptr);
    press("level-4", Qt::Key_Left);
    CHECK(settings().mix().layerLevel[3] == doctest::Approx(0.95));
    settle();
    CHECK(tests == 1);
    click("moreLevels-head");
    CHECK(find("level-1") == nullptr);
}

TEST_CASE_FIXTURE(SoundScreen, "a change is not tested into a drill or a run-through") {
    open("drill");
    tap(Qt::Key_Space);
    play(0.5);
    settings().setVolume(0.5);
    settle();
    CHECK(tests == 0);
    tap(Qt::Key_Escape);
    play(1);
    open("runThrough");
    tap(Qt::Key_Space);
    open("settings");
    press("volume", Qt::Key_Right);
    settle();
    CHECK(tests == 0);
}
