// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of every screen for viewing, in the build folder's shots/.
#include "models/room/screen.h"
#include "screen_shots.h"

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

void shoot(ScreenFixture& stage, const QString& name) {
    const auto settle = [] {};
    piolo::test::shootAll(stage, name, settle, [](const QImage& picture, bool dark) {
        CHECK(colours(picture) > 8);
        CHECK((picture.pixelColor(2, picture.height() - 2).lightness() < 100) == dark);
    });
}

} // namespace

TEST_CASE("every screen has a picture in both themes at every size, and QML has no warnings") {
    ScreenFixture stage;
    stage.open("drill");
    shoot(stage, QStringLiteral("drill"));
    stage.tap(Qt::Key_Space);
    stage.play(3.5);
    shoot(stage, QStringLiteral("count-in"));
    stage.play(7.3);
    shoot(stage, QStringLiteral("playing"));
    stage.play(6);
    shoot(stage, QStringLiteral("clean"));
    stage.play(5);
    stage.tap(Qt::Key_Space);
    stage.play(0.3);
    shoot(stage, QStringLiteral("missed"));
    stage.play(10);
    stage.tap(Qt::Key_Space);
    stage.play(2);
    CHECK(stage.room().drill()->state() == piolo::models::DrillModel::State::Paused);
    shoot(stage, QStringLiteral("offer"));
    stage.tap(Qt::Key_Escape);
    stage.play(1);
    for (const auto& screen : piolo::models::screenTable) {
        if (screen.name == "drill") continue; // it has its picture already
        stage.open(screen.name);
        shoot(stage, QString::fromStdString(std::string(screen.name)));
    }
    stage.open("scales");
    for (const auto* side : {"grid", "weeks", "instrument"}) {
        stage.find(QStringLiteral("scalesScreen"))->setProperty("side", QString::fromLatin1(side));
        stage.play(0.1);
        shoot(stage, QStringLiteral("scales-") + QString::fromLatin1(side));
    }
    CHECK(stage.warnings().join("\n").toStdString() == "");
}

TEST_CASE("a run-through has a picture while it is played and when it is looked over") {
    ScreenFixture stage;
    stage.open("runThrough");
    stage.room().runThrough()->start();
    stage.play(0.1);
    shoot(stage, QStringLiteral("runThrough-playing"));
    stage.room().runThrough()->markStop();
    stage.room().runThrough()->finish(true);
    stage.play(0.1);
    shoot(stage, QStringLiteral("runThrough-review"));
    CHECK(stage.warnings().join("\n").toStdString() == "");
}

TEST_CASE("the first start has a picture, too") {
    ScreenFixture stage(true);
    CHECK(stage.room().screen() == "welcome");
    shoot(stage, QStringLiteral("welcome"));
    CHECK(stage.warnings().join("\n").toStdString() == "");
}
