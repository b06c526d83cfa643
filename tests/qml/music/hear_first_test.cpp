// SPDX-License-Identifier: GPL-3.0-or-later
// Hearing the notes of a passage first, with keys alone.
#include "../accessible_walk.h"
#include "../screen_fixture.h"

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
        fact.passage = fixture.passage();
        fact.notes.emplace();
        for (int half = 0; half < 4; ++half) {
            Note note;
            note.sounding = 62 + half;
            note.onset = {half, 2};
            note.length = {1, 2};
            fact.notes->push_back(note);
        }
        fixture.room().book().record(fact);
        fixture.room().openDrill(QString::fromStdString(fixture.passage().text()));
        fixture.play(0.1);
        fixture.click("howToPlay");
    }
    [[nodiscard]] DrillModel& drill() { return *fixture.room().drill(); }
    [[nodiscard]] bool isShown(const char* name) {
        const QQuickItem* item = fixture.find(QString::fromLatin1(name));
        return item != nullptr && item->isVisible();
    }
    ScreenFixture fixture;
};

} // namespace

TEST_CASE("a passage without known notes has no button to hear it") {
    Noted noted;
    CHECK(noted.isShown("hear"));
    CHECK(noted.isShown("modelClick"));
    PassageFact without;
    without.passage = noted.fixture.passage();
    without.notes.emplace();
    noted.fixture.room().book().record(without);
    noted.fixture.play(0.1);
    CHECK_FALSE(noted.isShown("hear"));
    CHECK_FALSE(noted.isShown("modelClick"));
    noted.fixture.tap(Qt::Key_H);
    CHECK_FALSE(noted.drill().listening()->active());
}

TEST_CASE("H plays the notes, Esc stops them, and another screen does") {
    Noted noted;
    noted.fixture.tap(Qt::Key_H);
    noted.fixture.play(1);
    CHECK(noted.drill().listening()->active());
    CHECK(noted.isShown("hear"));
    noted.fixture.tap(Qt::Key_Escape);
    CHECK_FALSE(noted.drill().listening()->active());
    noted.fixture.play(0.5);
    noted.fixture.tap(Qt::Key_H);
    noted.fixture.play(0.5);
    CHECK(noted.drill().listening()->active());
    noted.fixture.room().setScreen("log");
    CHECK_FALSE(noted.drill().listening()->active());
}

TEST_CASE("playing with or without the click is remembered, and set by keyboard") {
    Noted noted;
    QQuickItem* tick = noted.fixture.find("modelClick");
    REQUIRE(tick != nullptr);
    CHECK(noted.drill().listening()->withClick());
    tick->forceActiveFocus(Qt::TabFocusReason);
    noted.fixture.tap(Qt::Key_Space);
    noted.fixture.play(0.1);
    CHECK(noted.drill().state() == DrillModel::State::Stopped);
    CHECK_FALSE(noted.drill().listening()->withClick());
}

TEST_CASE("during the playback every control has a name, and the drill has a picture in both themes") {
    Noted noted;
    noted.fixture.tap(Qt::Key_H);
    noted.fixture.play(2.5);
    const auto walk = test::walkAccessibly(noted.fixture.window());
    CHECK(walk.controls >= 20);
    CHECK(walk.nameless.join("\n").toStdString() == "");
    REQUIRE(QDir().mkpath(PIOLO_SHOTS));
    for (const QSize size : {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080)}) {
        noted.fixture.resize(size.width(), size.height());
        for (const bool dark : {false, true}) {
            noted.fixture.setDark(dark);
            const QImage picture = noted.fixture.shot();
            CHECK(picture.size() == size);
            CHECK((picture.pixelColor(2, size.height() - 2).lightness() < 100) == dark);
            CHECK(picture.save(QStringLiteral("%1/heard-%2x%3%4.png")
                                   .arg(PIOLO_SHOTS)
                                   .arg(size.width())
                                   .arg(size.height())
                                   .arg(dark ? QStringLiteral("-dark") : QString())));
        }
    }
    CHECK(noted.fixture.warnings().join("\n").toStdString() == "");
}
