// SPDX-License-Identifier: GPL-3.0-or-later
// Hearing the notes of a passage first, with keys alone.
#include "accessible_walk.h"
#include "screen_fixture.h"

#include <doctest/doctest.h>

#include <QDir>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::ScreenFixture;

namespace {

/// The drill of a passage with known notes.
struct Noted {
    Noted() {
        PassageFact fact;
        fact.passage = stage.passage();
        fact.notes.emplace();
        for (int half = 0; half < 4; ++half) {
            Note note;
            note.sounding = 62 + half;
            note.onset = {half, 2};
            note.length = {1, 2};
            fact.notes->push_back(note);
        }
        stage.room().book().record(fact);
        stage.room().openDrill(QString::fromStdString(stage.passage().text()));
        stage.play(0.1);
    }
    [[nodiscard]] DrillModel& drill() { return *stage.room().drill(); }
    [[nodiscard]] bool isShown(const char* name) {
        const QQuickItem* item = stage.find(QString::fromLatin1(name));
        return item != nullptr && item->isVisible();
    }
    ScreenFixture stage;
};

} // namespace

TEST_CASE("a passage without known notes has no button to hear it") {
    Noted noted;
    CHECK(noted.isShown("hear"));
    CHECK(noted.isShown("modelClick"));
    PassageFact without;
    without.passage = noted.stage.passage();
    without.notes.emplace();
    noted.stage.room().book().record(without);
    noted.stage.play(0.1);
    CHECK_FALSE(noted.isShown("hear"));
    CHECK_FALSE(noted.isShown("modelClick"));
    noted.stage.tap(Qt::Key_H);
    CHECK_FALSE(noted.drill().listening()->active());
}

TEST_CASE("H plays the notes, Esc stops them, and another screen does") {
    Noted noted;
    noted.stage.tap(Qt::Key_H);
    noted.stage.play(1);
    CHECK(noted.drill().listening()->active());
    CHECK(noted.isShown("hear"));
    noted.stage.tap(Qt::Key_Escape);
    CHECK_FALSE(noted.drill().listening()->active());
    noted.stage.play(0.5);
    noted.stage.tap(Qt::Key_H);
    noted.stage.play(0.5);
    CHECK(noted.drill().listening()->active());
    noted.stage.room().setScreen("log");
    CHECK_FALSE(noted.drill().listening()->active());
}

TEST_CASE("playing with or without the click is remembered, and set by keyboard") {
    Noted noted;
    QQuickItem* tick = noted.stage.find("modelClick");
    REQUIRE(tick != nullptr);
    CHECK(noted.drill().listening()->withClick());
    tick->forceActiveFocus(Qt::TabFocusReason);
    noted.stage.tap(Qt::Key_Space);
    noted.stage.play(0.1);
    CHECK(noted.drill().state() == DrillModel::State::Stopped);
    CHECK_FALSE(noted.drill().listening()->withClick());
}

TEST_CASE("during the playback every control has a name, and the drill has a picture in both themes") {
    Noted noted;
    noted.stage.tap(Qt::Key_H);
    noted.stage.play(2.5);
    const auto walk = test::walkAccessibly(noted.stage.window());
    CHECK(walk.controls >= 20);
    CHECK(walk.nameless.join("\n").toStdString() == "");
    REQUIRE(QDir().mkpath(PIOLO_SHOTS));
    for (const QSize size : {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080)}) {
        noted.stage.resize(size.width(), size.height());
        for (const bool dark : {false, true}) {
            noted.stage.setDark(dark);
            const QImage picture = noted.stage.shot();
            CHECK(picture.size() == size);
            CHECK((picture.pixelColor(2, size.height() - 2).lightness() < 100) == dark);
            CHECK(picture.save(QStringLiteral("%1/heard-%2x%3%4.png")
                                   .arg(PIOLO_SHOTS)
                                   .arg(size.width())
                                   .arg(size.height())
                                   .arg(dark ? QStringLiteral("-dark") : QString())));
        }
    }
    CHECK(noted.stage.warnings().join("\n").toStdString() == "");
}
