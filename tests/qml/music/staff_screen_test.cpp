// SPDX-License-Identifier: GPL-3.0-or-later
// The drill of a passage with known notes: its staff while stopped, while heard and while played.
#include "../accessible_walk.h"
#include "../screen_shots.h"

#include <doctest/doctest.h>

using namespace piolo;
using piolo::test::ScreenFixture;

namespace {

/// Sixteenths in every bar of the fixture's passage.
struct Noted {
    explicit Noted(int bars) {
        PassageFact fact;
        fact.passage = fixture.passage();
        fact.music = fixture.room().book().notebook().passage(fixture.passage())->passage.music;
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
        fixture.room().book().record(fact);
        fixture.room().openDrill(QString::fromStdString(fixture.passage().text()));
        fixture.play(0.2);
    }
    [[nodiscard]] QQuickItem* staff(const char* name) const {
        return fixture.find(QString::fromLatin1(name));
    }
    [[nodiscard]] static int number(const QQuickItem* item, const char* property) {
        return item->property(property).toInt();
    }
    void shoot(const char* name) { test::shootAll(fixture, QString::fromLatin1(name)); }
    ScreenFixture fixture;
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
        noted.fixture.tap(Qt::Key_Space);
        noted.fixture.play(9);
        const QQuickItem* playing = noted.staff("staffPlaying");
        REQUIRE(playing != nullptr);
        CHECK(playing->isVisible());
        CHECK(playing->property("space").toDouble() >= 7.9); // a hundredth of the window's height
        CHECK(Noted::number(playing, "bar") >= 1);
        const auto walk = test::walkAccessibly(noted.fixture.window());
        CHECK(walk.nameless.join("\n").toStdString() == "");
        noted.shoot(bars == 4 ? "staff-playing" : "staff-long-playing");
        noted.fixture.tap(Qt::Key_Escape);
        noted.fixture.play(0.5);
        CHECK(noted.fixture.warnings().join("\n").toStdString() == "");
    }
}

TEST_CASE(
    "below the music, every control of the drill has its place from the first picture on, at every size") {
    for (const QSize size :
         {QSize(480, 640), QSize(600, 960), QSize(1024, 640), QSize(1280, 800), QSize(1920, 1080)}) {
        Noted noted(4);
        noted.fixture.openWindow();
        noted.fixture.resize(size.width(), size.height());
        noted.fixture.play(0.2);
        CAPTURE(size.width());
        for (const auto* name : {"wayBack", "nextPassage", "slower", "faster", "start", "howToPlay"}) {
            const QQuickItem* item = noted.staff(name);
            CAPTURE(name);
            REQUIRE(item != nullptr);
            CHECK(item->isVisible());
            CHECK(item->width() >= 64);
            CHECK(item->height() >= 44);
            const QRectF place = item->mapRectToScene(item->boundingRect());
            CHECK(QRectF(QPointF(0, 0), QSizeF(size)).contains(place));
        }
    }
}

TEST_CASE("the system being played stays visible through a long passage") {
    Noted noted(24);
    noted.fixture.tap(Qt::Key_Space);
    int last = 0;
    for (int i = 0; i < 60; ++i) {
        noted.fixture.play(1);
        const QQuickItem* staff = noted.staff("staffPlaying");
        if (staff == nullptr || !staff->isVisible() || Noted::number(staff, "bar") < 0) continue;
        last = std::max(last, Noted::number(staff, "firstShown"));
        REQUIRE(Noted::number(staff, "shown") >= 1);
    }
    CHECK(last > 0);
}

TEST_CASE("the note that sounds is marked while the passage is heard") {
    Noted noted(4);
    noted.fixture.tap(Qt::Key_H);
    int highest = -1;
    for (int i = 0; i < 40; ++i) {
        noted.fixture.play(0.2);
        highest = std::max(highest, Noted::number(noted.staff("staffReady"), "lit"));
        if (highest >= 5) break;
    }
    CHECK(highest >= 5);
    noted.shoot("staff-heard");
    noted.fixture.tap(Qt::Key_Escape);
    noted.fixture.play(0.5);
    CHECK(Noted::number(noted.staff("staffReady"), "lit") == -1);
    CHECK(noted.fixture.warnings().join("\n").toStdString() == "");
}
