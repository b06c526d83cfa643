// SPDX-License-Identifier: GPL-3.0-or-later
#include "accessible_walk.h"
#include "models/room/screen.h"
#include "screen_fixture.h"

#include <doctest/doctest.h>

#include <QQmlComponent>

using piolo::test::AccessibleWalk;
using piolo::test::ScreenFixture;
using piolo::test::walkAccessibly;

namespace {

void checkNamed(ScreenFixture& stage, int least) {
    const AccessibleWalk walk = walkAccessibly(stage.window());
    CHECK(walk.controls >= least);
    CHECK(walk.nameless.join("\n").toStdString() == "");
}

} // namespace

TEST_CASE("every control of every screen has a name for a screen reader") {
    ScreenFixture stage;
    for (const auto& screen : piolo::models::screenTable) {
        CAPTURE(screen.name);
        stage.open(screen.name);
        checkNamed(stage, screen.name == "drill" ? 20 : 4);
    }
}

TEST_CASE("while something is played, and when a run-through is looked over, too") {
    ScreenFixture stage;
    stage.open("drill");
    stage.tap(Qt::Key_Space);
    stage.play(6);
    checkNamed(stage, 5);
    stage.tap(Qt::Key_Escape);
    stage.play(1);
    stage.open("runThrough");
    auto& run = *stage.room().runThrough();
    run.start();
    stage.play(0.1);
    checkNamed(stage, 3);
    run.markStop();
    run.finish(true);
    stage.play(0.1);
    REQUIRE(run.state() == piolo::models::RunThroughModel::State::Review);
    checkNamed(stage, 4);
}

TEST_CASE("the first start, too") {
    ScreenFixture stage(true);
    checkNamed(stage, 4);
}

TEST_CASE("a nameless button is found") {
    ScreenFixture stage;
    QQmlComponent component(qmlEngine(stage.find("screens")));
    component.setData("import QtQuick.Templates as T\nT.Button { implicitWidth: 40; implicitHeight: 40 }",
                      QUrl());
    const std::unique_ptr<QObject> button(component.create());
    REQUIRE(button != nullptr);
    const auto before = walkAccessibly(stage.window()).nameless.size();
    qobject_cast<QQuickItem*>(button.get())->setParentItem(stage.window().contentItem());
    CHECK(walkAccessibly(stage.window()).nameless.size() > before);
}
