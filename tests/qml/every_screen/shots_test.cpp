// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of every screen for viewing, in the build folder's shots/.
#include "../screen_shots.h"
#include "models/room/screen.h"

#include <doctest/doctest.h>

#include <QSet>

using piolo::test::ScreenFixture;

namespace {

int colours(const QImage& image) {
    QSet<QRgb> seen;
    for (int y = 0; y < image.height(); y += 3)
        for (int x = 0; x < image.width(); x += 3) seen.insert(image.pixel(x, y));
    return static_cast<int>(seen.size());
}

void shoot(ScreenFixture& fixture, const QString& name) {
    const auto settle = [] {};
    piolo::test::shootAll(fixture, name, settle, [](const QImage& picture, bool dark) {
        CHECK(colours(picture) > 8);
        CHECK((picture.pixelColor(2, picture.height() - 2).lightness() < 100) == dark);
    });
}

} // namespace

TEST_CASE("every screen has a picture in both themes at every size, and QML has no warnings") {
    ScreenFixture fixture;
    fixture.open("drill");
    shoot(fixture, QStringLiteral("drill"));
    fixture.tap(Qt::Key_Space);
    fixture.play(3.5);
    shoot(fixture, QStringLiteral("count-in"));
    fixture.play(7.3);
    shoot(fixture, QStringLiteral("playing"));
    fixture.play(6);
    shoot(fixture, QStringLiteral("clean"));
    fixture.play(5);
    fixture.tap(Qt::Key_Space);
    fixture.play(0.3);
    shoot(fixture, QStringLiteral("missed"));
    fixture.play(10);
    fixture.tap(Qt::Key_Space);
    fixture.play(2);
    CHECK(fixture.room().drill()->state() == piolo::models::DrillModel::State::Paused);
    shoot(fixture, QStringLiteral("offer"));
    fixture.tap(Qt::Key_Escape);
    fixture.play(1);
    for (const auto& screen : piolo::models::screenTable) {
        if (screen.name == "drill") continue; // it has its picture already
        fixture.open(screen.name);
        shoot(fixture, QString::fromStdString(std::string(screen.name)));
    }
    fixture.open("scales");
    for (const auto* side : {"grid", "weeks", "instrument"}) {
        fixture.find(QStringLiteral("scalesScreen"))->setProperty("side", QString::fromLatin1(side));
        fixture.play(0.1);
        shoot(fixture, QStringLiteral("scales-") + QString::fromLatin1(side));
    }
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("a run-through has a picture while it is played and when it is looked over") {
    ScreenFixture fixture;
    fixture.open("runThrough");
    fixture.room().runThrough()->start();
    fixture.play(0.1);
    shoot(fixture, QStringLiteral("runThrough-playing"));
    fixture.room().runThrough()->markStop();
    fixture.room().runThrough()->finish(true);
    fixture.play(0.1);
    shoot(fixture, QStringLiteral("runThrough-review"));
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("the first start has a picture, too") {
    ScreenFixture fixture(true);
    CHECK(fixture.room().screen() == "welcome");
    shoot(fixture, QStringLiteral("welcome"));
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}
