// SPDX-License-Identifier: GPL-3.0-or-later
// Measures on the pictures how the edges of controls and cards, and focus rings, stand out from what is
// beside them: WCAG 2.2, success criterion 1.4.11 (AA), 3:1.
#include "contrast.h"
#include "edge_walk.h"
#include "models/room/screen.h"
#include "screen_fixture.h"

#include <doctest/doctest.h>

#include <QQmlExpression>
#include <QSet>

using namespace piolo::test;

namespace {

constexpr double least = 3;

struct Measured {
    QStringList faint;
    int edges = 0;
};

Measured measure(ScreenFixture& fixture) {
    Measured measured;
    const QImage picture = fixture.shot();
    for (const Edge& edge : edges(fixture.shown())) {
        const auto found = weakestSide(*edge.body, picture);
        if (!found) continue;
        ++measured.edges;
        if (*found < least)
            measured.faint << QStringLiteral("%1: %2").arg(nameOf(*edge.item)).arg(*found, 0, 'f', 2);
    }
    return measured;
}

void checkBothThemes(ScreenFixture& fixture, const std::string& screen, int expected) {
    CAPTURE(screen);
    for (const bool dark : {false, true}) {
        CAPTURE(dark);
        fixture.setDark(dark);
        fixture.play(0.1);
        (void)fixture.shot(); // lists are laid out while they are drawn
        const Measured measured = measure(fixture);
        CHECK(measured.edges >= expected);
        CHECK(measured.faint.join("\n").toStdString() == "");
    }
    fixture.setDark(false);
}

QRgb focusColour(const QQuickItem& item) {
    QQmlExpression theme(qmlContext(&item), nullptr, QStringLiteral("Theme.focus"));
    const auto colour = theme.evaluate().value<QColor>();
    REQUIRE(colour.isValid());
    return colour.rgb();
}

/// One control of each type on the present screen.
int checkRings(ScreenFixture& fixture) {
    QSet<QByteArray> types;
    for (const Edge& edge : edges(fixture.shown())) {
        const QByteArray type = edge.item->metaObject()->className();
        if (isCard(*edge.item) || !edge.item->activeFocusOnTab() || types.contains(type)) continue;
        QQuickItem* const item = edge.item;
        item->nextItemInFocusChain()->forceActiveFocus(
            Qt::TabFocusReason); // it may have it by the screen's wish
        item->forceActiveFocus(Qt::TabFocusReason);
        fixture.play(0.05);
        if (!item->hasActiveFocus()) continue;
        types.insert(type);
        CAPTURE(nameOf(*item).toStdString());
        (void)fixture.shot(); // lists and pages move to the focus
        CHECK(showsColour(*edge.body, fixture.shot(), focusColour(*item), least));
    }
    return static_cast<int>(types.size());
}

} // namespace

TEST_CASE("every edge of a control or a card stands out from what is beside it, in both themes") {
    ScreenFixture fixture;
    for (const auto& screen : piolo::models::screenTable) {
        fixture.open(screen.name);
        checkBothThemes(fixture, std::string(screen.name), 2);
    }
    fixture.open("scales");
    for (const auto* side : {"grid", "weeks", "instrument"}) {
        fixture.find(QStringLiteral("scalesScreen"))->setProperty("side", QString::fromLatin1(side));
        checkBothThemes(fixture, side, 3);
    }
    fixture.open("drill");
    fixture.tap(Qt::Key_Space);
    fixture.play(8);
    checkBothThemes(fixture, "playing", 2);
}

TEST_CASE("so it does at the first start, and in a small window") {
    ScreenFixture first(true);
    checkBothThemes(first, "welcome", 3);
    ScreenFixture fixture;
    fixture.resize(1024, 640);
    for (const auto& screen : piolo::models::screenTable) {
        fixture.open(screen.name);
        checkBothThemes(fixture, std::string(screen.name), 2);
    }
    fixture.resize(480, 640);
    for (const auto* screen : {"settings", "help"}) {
        fixture.open(screen);
        checkBothThemes(fixture, screen, 2);
    }
}

TEST_CASE("a focus ring stands out from what is beside it, on controls of every type") {
    ScreenFixture fixture;
    for (const auto& screen : piolo::models::screenTable) {
        for (const bool dark : {false, true}) {
            fixture.setDark(dark);
            fixture.open(screen.name);
            CAPTURE(screen.name);
            CAPTURE(dark);
            CHECK(checkRings(fixture) >= 1);
        }
    }
}

TEST_CASE("an edge that is too faint is found") {
    ScreenFixture fixture;
    fixture.open("settings");
    CHECK(measure(fixture).faint.isEmpty());
    QObject* const card = fixture.find(QStringLiteral("voice"));
    REQUIRE(card != nullptr);
    QQuickItem* above = qobject_cast<QQuickItem*>(card);
    while (above != nullptr && !isCard(*above)) above = above->parentItem();
    REQUIRE(above != nullptr);
    above->property("border").value<QObject*>()->setProperty("color", QColor(0xd8, 0xcf, 0xbd));
    CHECK(measure(fixture).faint.size() == 1);
}
