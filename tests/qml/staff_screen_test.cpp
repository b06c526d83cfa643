// SPDX-License-Identifier: GPL-3.0-or-later
// The drill of a passage with known notes: its staff while stopped, while heard and while played.
#include "accessible_walk.h"
#include "screen_shots.h"

#include <doctest/doctest.h>

using namespace piolo;
using piolo::test::ScreenFixture;

namespace {

/// Sixteenths in every bar of the fixture's passage.
struct Noted {
    explicit Noted(int bars) {
        PassageFact fact;
        fact.passage = stage.passage();
        fact.music = stage.room().book().notebook().passage(stage.passage())->passage.music;
        fact.music->bars = bars;
        fact.music->subdivision = 4;
        fact.notes.emplace();
        for (int i = 0; i < 16 * bars; ++i) {
            Note note;
            note.written = {"DEFGABCD"[i % 8], static_cast<std::int8_t>(i % 8 == 2 ? 1 : 0),
                            static_cast<std::int8_t>(i % 8 < 6 ? 4 : 5)};
            note.onset = Fraction{i, 16}.reduced();
            note.length = {1, 16};
            fact.notes->push_back(note);
        }
        stage.room().book().record(fact);
        stage.room().openDrill(QString::fromStdString(stage.passage().text()));
        stage.play(0.2);
    }
    [[nodiscard]] QQuickItem* staff(const char* name) const { return stage.find(QString::fromLatin1(name)); }
    [[nodiscard]] static int number(const QQuickItem* item, const char* property) {
        return item->property(property).toInt();
    }
    void shoot(const char* name) { test::shootAll(stage, QString::fromLatin1(name)); }
    ScreenFixture stage;
};

} // namespace

TEST_CASE("a passage with known notes shows them on a staff, stopped and playing, large enough to read") {
    for (const int bars : {4, 24}) {
        Noted noted(bars);
        CAPTURE(bars);
        const QQuickItem* ready = noted.staff("staffReady");
        REQUIRE(ready != nullptr);
        CHECK(ready->isVisible());
        CHECK(ready->property("space").toDouble() >= 7);
        CHECK(Noted::number(ready, "shown") >= 1);
        noted.shoot(bars == 4 ? "staff" : "staff-long");
        noted.stage.tap(Qt::Key_Space);
        noted.stage.play(9);
        const QQuickItem* playing = noted.staff("staffPlaying");
        REQUIRE(playing != nullptr);
        CHECK(playing->isVisible());
        CHECK(playing->property("space").toDouble() >= 7.9); // a hundredth of the window's height
        CHECK(Noted::number(playing, "bar") >= 1);
        const auto walk = test::walkAccessibly(noted.stage.window());
        CHECK(walk.nameless.join("\n").toStdString() == "");
        noted.shoot(bars == 4 ? "staff-playing" : "staff-long-playing");
        noted.stage.tap(Qt::Key_Escape);
        noted.stage.play(0.5);
        CHECK(noted.stage.warnings().join("\n").toStdString() == "");
    }
}

TEST_CASE(
    "below the music, every choice of the drill has its place from the first picture on, at every size") {
    for (const QSize size : {QSize(1024, 640), QSize(1280, 800), QSize(1920, 1080)}) {
        Noted noted(4);
        noted.stage.openWindow();
        noted.stage.resize(size.width(), size.height());
        noted.stage.play(0.2);
        CAPTURE(size.width());
        for (const auto* name : {"feltBeat", "articulation", "rhythm", "waysToPlay", "start", "hear"}) {
            const QQuickItem* item = noted.staff(name);
            CAPTURE(name);
            REQUIRE(item != nullptr);
            CHECK(item->isVisible());
            CHECK(item->width() >= 100);
            CHECK(item->height() >= 44);
            const QRectF place = item->mapRectToScene(item->boundingRect());
            CHECK(QRectF(QPointF(0, 0), QSizeF(size)).contains(place));
        }
    }
}

TEST_CASE("the system being played stays visible through a long passage") {
    Noted noted(24);
    noted.stage.tap(Qt::Key_Space);
    int last = 0;
    for (int i = 0; i < 60; ++i) {
        noted.stage.play(1);
        const QQuickItem* staff = noted.staff("staffPlaying");
        if (staff == nullptr || !staff->isVisible() || Noted::number(staff, "bar") < 0) continue;
        last = std::max(last, Noted::number(staff, "firstShown"));
        REQUIRE(Noted::number(staff, "shown") >= 1);
    }
    CHECK(last > 0);
}

TEST_CASE("the note that sounds is marked while the passage is heard") {
    Noted noted(4);
    noted.stage.tap(Qt::Key_H);
    int highest = -1;
    for (int i = 0; i < 40; ++i) {
        noted.stage.play(0.2);
        highest = std::max(highest, Noted::number(noted.staff("staffReady"), "lit"));
        if (highest >= 5) break;
    }
    CHECK(highest >= 5);
    noted.shoot("staff-heard");
    noted.stage.tap(Qt::Key_Escape);
    noted.stage.play(0.5);
    CHECK(Noted::number(noted.staff("staffReady"), "lit") == -1);
    CHECK(noted.stage.warnings().join("\n").toStdString() == "");
}
