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
        stage.room().openDrill(QString::fromStdString(stage.passage().text()));
        stage.play(0.1);
    }
    [[nodiscard]] DrillModel& drill() { return *stage.room().drill(); }
    [[nodiscard]] const PassageRecord& record() {
        return *stage.room().book().notebook().passage(stage.passage());
    }
    ScreenFixture stage;
};

} // namespace

TEST_CASE("Space starts, Space at a mistake drops the tempo, Backspace takes it back, Esc stops") {
    Drilled drilled;
    const QString opening = drilled.drill().text()->tempo();
    drilled.stage.tap(Qt::Key_Space);
    drilled.stage.play(6);
    CHECK(drilled.drill().state() == DrillModel::State::Playing);
    const Tempo before = drilled.record().standing.tempo;
    drilled.stage.tap(Qt::Key_Space);
    drilled.stage.play(0.5);
    CHECK(drilled.record().standing.tempo.thousandths() == before.thousandths() - 4000);
    CHECK(drilled.drill().feedback() == DrillModel::Feedback::Missed);
    drilled.stage.tap(Qt::Key_Backspace);
    drilled.stage.play(0.5);
    CHECK(drilled.record().standing.tempo == before);
    drilled.stage.tap(Qt::Key_Escape);
    drilled.stage.play(0.5);
    CHECK(drilled.drill().state() == DrillModel::State::Stopped);
    CHECK(drilled.drill().text()->tempo() == opening);
}

TEST_CASE(
    "a focused button does not swallow Space while the click runs, and is pressed by it while stopped") {
    Drilled drilled;
    QQuickItem* start = drilled.stage.find("start");
    REQUIRE(start != nullptr);
    start->forceActiveFocus(Qt::TabFocusReason);
    drilled.stage.tap(Qt::Key_Space);
    REQUIRE(drilled.drill().state() == DrillModel::State::Playing);
    drilled.stage.play(6);
    QQuickItem* tab = drilled.stage.find("tab-help");
    CHECK(tab == nullptr); // nothing is shown that could be pressed by mistake
    drilled.stage.tap(Qt::Key_Space);
    drilled.stage.play(0.5);
    CHECK(drilled.drill().feedback() == DrillModel::Feedback::Missed);
}

TEST_CASE("on another screen the drill's keys do nothing") {
    Drilled drilled;
    drilled.stage.room().setScreen("help");
    drilled.stage.play(0.1);
    drilled.stage.tap(Qt::Key_PageDown);
    drilled.stage.play(0.5);
    CHECK(drilled.drill().state() == DrillModel::State::Stopped);
}

TEST_CASE("leaving the drill stops the click") {
    Drilled drilled;
    drilled.stage.tap(Qt::Key_Space);
    drilled.stage.play(1);
    drilled.stage.room().setScreen("passages");
    drilled.stage.play(1);
    CHECK(drilled.drill().state() == DrillModel::State::Stopped);
}

TEST_CASE("while the click runs, no text is smaller than a twenty-fifth of the window's height") {
    Drilled drilled;
    drilled.stage.tap(Qt::Key_Space);
    drilled.stage.play(6);
    for (const QSize size : {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080), QSize(3840, 2160)}) {
        drilled.stage.resize(size.width(), size.height());
        int texts = 0;
        for (QQuickItem* item : drilled.stage.shown()) {
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
    CHECK(drilled.stage.room().notice() == "");
    drilled.stage.sound().become(practice::SoundState::Kind::silent);
    CHECK(drilled.stage.room().notice() != "");
    CHECK(drilled.stage.find("notice")->isVisible());
    drilled.stage.sound().become(practice::SoundState::Kind::playing);
    CHECK(drilled.stage.room().notice() == "");
}
