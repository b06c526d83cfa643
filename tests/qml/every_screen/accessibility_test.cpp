// SPDX-License-Identifier: GPL-3.0-or-later
#include "../accessible_walk.h"
#include "../screen_fixture.h"
#include "models/room/screen.h"

#include <doctest/doctest.h>

#include <QQmlComponent>

using piolo::test::AccessibleWalk;
using piolo::test::ScreenFixture;
using piolo::test::walkAccessibly;

namespace {

void checkNamed(ScreenFixture& fixture, int least) {
    const AccessibleWalk walk = walkAccessibly(fixture.window());
    CHECK(walk.controls >= least);
    CHECK(walk.nameless.join("\n").toStdString() == "");
}

} // namespace

TEST_CASE("every control of every screen has a name for a screen reader") {
    ScreenFixture fixture;
    for (const auto& screen : piolo::models::screenTable) {
        CAPTURE(screen.name);
        fixture.open(screen.name);
        checkNamed(fixture, 4);
    }
}

TEST_CASE("while something is played, and when a run-through is looked over, too") {
    ScreenFixture fixture;
    fixture.open("drill");
    fixture.tap(Qt::Key_Space);
    fixture.play(6);
    checkNamed(fixture, 5);
    fixture.tap(Qt::Key_Escape);
    fixture.play(1);
    fixture.open("runThrough");
    auto& run = *fixture.room().runThrough();
    run.start();
    fixture.play(0.1);
    checkNamed(fixture, 3);
    run.markStop();
    run.finish(true);
    fixture.play(0.1);
    REQUIRE(run.state() == piolo::models::RunThroughModel::State::Review);
    checkNamed(fixture, 4);
}

TEST_CASE("the first start, too") {
    ScreenFixture fixture(true);
    checkNamed(fixture, 4);
}

TEST_CASE("a nameless button is found") {
    ScreenFixture fixture;
    QQmlComponent component(qmlEngine(fixture.find("screens")));
    component.setData("import QtQuick.Templates as T\nT.Button { implicitWidth: 40; implicitHeight: 40 }",
                      QUrl());
    const std::unique_ptr<QObject> button(component.create());
    REQUIRE(button != nullptr);
    const auto before = walkAccessibly(fixture.window()).nameless.size();
    qobject_cast<QQuickItem*>(button.get())->setParentItem(fixture.window().contentItem());
    CHECK(walkAccessibly(fixture.window()).nameless.size() > before);
}
