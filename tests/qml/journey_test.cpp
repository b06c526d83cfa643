// SPDX-License-Identifier: GPL-3.0-or-later
// The main task with keys alone, from the drill screen to the log.
#include "screen_fixture.h"

#include <doctest/doctest.h>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::ScreenFixture;

namespace {

struct Drilled {
    Drilled() {
        fixture.room().openDrill(QString::fromStdString(fixture.passage().text()));
        fixture.play(0.1);
    }
    [[nodiscard]] DrillModel& drill() { return *fixture.room().drill(); }
    [[nodiscard]] const PassageRecord& record() {
        return *fixture.room().book().notebook().passage(fixture.passage());
    }
    ScreenFixture fixture;
};

} // namespace

TEST_CASE("Space starts, Space at a mistake drops the tempo, Backspace takes it back, Esc stops") {
    Drilled drilled;
    const QString opening = drilled.drill().text()->tempo();
    drilled.fixture.tap(Qt::Key_Space);
    drilled.fixture.play(6);
    CHECK(drilled.drill().state() == DrillModel::State::Playing);
    const Tempo before = drilled.record().standing.tempo;
    drilled.fixture.tap(Qt::Key_Space);
    drilled.fixture.play(0.5);
    CHECK(drilled.record().standing.tempo.thousandths() == before.thousandths() - 4000);
    CHECK(drilled.drill().feedback() == DrillModel::Feedback::Missed);
    drilled.fixture.tap(Qt::Key_Backspace);
    drilled.fixture.play(0.5);
    CHECK(drilled.record().standing.tempo == before);
    drilled.fixture.tap(Qt::Key_Escape);
    drilled.fixture.play(0.5);
    CHECK(drilled.drill().state() == DrillModel::State::Stopped);
    CHECK(drilled.drill().text()->tempo() == opening);
}

TEST_CASE(
    "a focused button does not swallow Space while the click runs, and is pressed by it while stopped") {
    Drilled drilled;
    QQuickItem* start = drilled.fixture.find("start");
    REQUIRE(start != nullptr);
    start->forceActiveFocus(Qt::TabFocusReason);
    drilled.fixture.tap(Qt::Key_Space);
    REQUIRE(drilled.drill().state() == DrillModel::State::Playing);
    drilled.fixture.play(6);
    QQuickItem* tab = drilled.fixture.find("tab-help");
    CHECK(tab == nullptr); // nothing is shown that could be pressed by mistake
    drilled.fixture.tap(Qt::Key_Space);
    drilled.fixture.play(0.5);
    CHECK(drilled.drill().feedback() == DrillModel::Feedback::Missed);
}

TEST_CASE("on another screen the drill's keys do nothing") {
    Drilled drilled;
    drilled.fixture.room().setScreen("help");
    drilled.fixture.play(0.1);
    drilled.fixture.tap(Qt::Key_PageDown);
    drilled.fixture.play(0.5);
    CHECK(drilled.drill().state() == DrillModel::State::Stopped);
}

TEST_CASE("leaving the drill stops the click") {
    Drilled drilled;
    drilled.fixture.tap(Qt::Key_Space);
    drilled.fixture.play(1);
    drilled.fixture.room().setScreen("passages");
    drilled.fixture.play(1);
    CHECK(drilled.drill().state() == DrillModel::State::Stopped);
}

TEST_CASE("while the click runs, no text is smaller than a twenty-fifth of the window's height") {
    Drilled drilled;
    drilled.fixture.tap(Qt::Key_Space);
    drilled.fixture.play(6);
    for (const QSize size : {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080), QSize(3840, 2160)}) {
        drilled.fixture.resize(size.width(), size.height());
        int texts = 0;
        for (QQuickItem* item : drilled.fixture.shown()) {
            if (!item->inherits("QQuickText") || item->property("text").toString().isEmpty()) continue;
            ++texts;
            INFO(item->property("text").toString().toStdString());
            const int pixels = item->property("font").value<QFont>().pixelSize();
            CHECK(pixels >= size.height() / 25.0 - 1);
        }
        CHECK(texts > 6);
    }
}

TEST_CASE("lost sound is reported in one line until it is back") {
    Drilled drilled;
    CHECK(drilled.fixture.room().notice() == "");
    drilled.fixture.sound().become(practice::SoundState::Kind::silent);
    CHECK(drilled.fixture.room().notice() != "");
    CHECK(drilled.fixture.find("notice")->isVisible());
    drilled.fixture.sound().become(practice::SoundState::Kind::playing);
    CHECK(drilled.fixture.room().notice() == "");
}
