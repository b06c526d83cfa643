// SPDX-License-Identifier: GPL-3.0-or-later
// How much there is to choose from on each screen, and how many stops the Tab key makes there.
#include "accessible_walk.h"
#include "models/room/screen.h"
#include "screen_fixture.h"

#include <doctest/doctest.h>

#include <QAccessible>
#include <QSet>
#include <QTest>

using piolo::test::isControl;
using piolo::test::ScreenFixture;

namespace {

/// Each control once, however many faces it has.
void gather(QAccessibleInterface* face, QSet<QObject*>& found) {
    if (face == nullptr || !face->isValid() || face->state().invisible) return;
    if (isControl(face->role())) found.insert(face->object());
    for (int child = 0; child < face->childCount(); ++child) gather(face->child(child), found);
}

qsizetype controls(ScreenFixture& fixture) {
    QSet<QObject*> found;
    gather(QAccessible::queryAccessibleInterface(&fixture.window()), found);
    return found.size();
}

/// Different items that get the focus until the Tab key is back where it was before.
qsizetype tabStops(ScreenFixture& fixture) {
    constexpr int most = 400;
    QSet<QQuickItem*> stops;
    for (int press = 0; press < most; ++press) {
        QTest::keyClick(&fixture.window(), Qt::Key_Tab);
        QQuickItem* const item = fixture.window().activeFocusItem();
        if (stops.contains(item)) break;
        stops.insert(item);
    }
    return stops.size();
}

} // namespace

TEST_CASE("the drill has at most nine stops of the Tab key") {
    ScreenFixture fixture;
    for (const auto& screen : piolo::models::screenTable) {
        fixture.open(screen.name);
        fixture.play(0.1);
        const qsizetype count = controls(fixture);
        const qsizetype stops = tabStops(fixture);
        MESSAGE(screen.name << ": " << count << " controls, " << stops << " stops of the Tab key");
        CHECK(count > 0);
        if (screen.name == "drill") CHECK(stops <= 9);
    }
}
