// SPDX-License-Identifier: GPL-3.0-or-later
// Measures the contrast of every text of every screen with its background on the pictures: WCAG 2.2, success
// criterion 1.4.3 (AA).
#include "../contrast.h"
#include "../screen_fixture.h"
#include "models/room/screen.h"

#include <doctest/doctest.h>

#include <QHash>

#include <algorithm>

using piolo::test::contrast;
using piolo::test::isDimmed;
using piolo::test::ScreenFixture;
using piolo::test::shownPart;

namespace {

/// The colour of most pixels: the background of a text.
QRgb groundOf(const QImage& part) {
    QHash<QRgb, int> counts;
    for (int y = 0; y < part.height(); ++y)
        for (int x = 0; x < part.width(); ++x) ++counts[part.pixel(x, y)];
    QRgb most = 0;
    int count = 0;
    for (auto seen = counts.cbegin(); seen != counts.cend(); ++seen)
        if (seen.value() > count) {
            most = seen.key();
            count = seen.value();
        }
    return most;
}

/// The strongest contrast of any pixel with the background: the middle of a stroke.
double strongest(const QImage& part) {
    const QRgb ground = groundOf(part);
    double found = 1;
    for (int y = 0; y < part.height(); ++y)
        for (int x = 0; x < part.width(); ++x) found = std::max(found, contrast(ground, part.pixel(x, y)));
    return found;
}

/// Large text: 24 px and up, or 18.66 px and up in bold.
double wanted(const QQuickItem* text) {
    const auto font = text->property("font").value<QFont>();
    const bool isLarge =
        font.pixelSize() >= 24 || (font.pixelSize() >= 19 && font.weight() >= QFont::DemiBold);
    return isLarge ? 3 : 4.5;
}

/// Texts with too little contrast, and how many were measured.
struct Measured {
    QStringList faint;
    int texts = 0;
};

/// The visible texts and their positions.
QHash<const QQuickItem*, QRectF> places(const ScreenFixture& fixture) {
    QHash<const QQuickItem*, QRectF> found;
    for (const QQuickItem* item : fixture.shown())
        if (item->inherits("QQuickText")) found.insert(item, item->mapRectToScene(item->boundingRect()));
    return found;
}

/// A picture in which all texts have their final positions: lists are laid out while they are drawn.
QImage settled(ScreenFixture& fixture) {
    for (int turn = 0; turn < 20; ++turn) {
        const auto before = places(fixture);
        QImage picture = fixture.shot();
        if (places(fixture) == before) return picture;
    }
    FAIL("the screen does not come to rest");
    return {};
}

Measured measure(ScreenFixture& fixture) {
    Measured measured;
    const QImage picture = settled(fixture);
    for (const QQuickItem* item : fixture.shown()) {
        if (!item->inherits("QQuickText") || item->property("text").toString().trimmed().isEmpty()) continue;
        if (isDimmed(item)) continue;
        const QRect place = shownPart(item, picture.rect());
        if (place.width() < 3 || place.height() < 6) continue;
        ++measured.texts;
        const double found = strongest(picture.copy(place));
        if (found >= wanted(item)) continue;
        measured.faint
            << QStringLiteral("%1: %2").arg(item->property("text").toString().left(40)).arg(found, 0, 'f', 2);
    }
    return measured;
}

void checkBothThemes(ScreenFixture& fixture, const char* screen, int least) {
    CAPTURE(screen);
    for (const bool dark : {false, true}) {
        CAPTURE(dark);
        fixture.setDark(dark);
        fixture.play(0.05);
        Measured measured = measure(fixture);
        // A line of a list may have its position before it is drawn.
        for (int turn = 0; turn < 5 && !measured.faint.isEmpty(); ++turn) {
            fixture.play(0.1);
            measured = measure(fixture);
        }
        CHECK(measured.texts >= least);
        CHECK(measured.faint.join("\n").toStdString() == "");
    }
}

/// The least number of texts on a screen, so that none passes by being empty.
int leastTexts(std::string_view screen) {
    if (screen == "drill") return 20;
    if (screen == "runThrough" || screen == "welcome") return 8;
    return screen == "scales" ? 10 : 12;
}

void checkEveryScreen(ScreenFixture& fixture) {
    for (const auto& screen : piolo::models::screenTable) {
        fixture.open(screen.name);
        checkBothThemes(fixture, std::string(screen.name).c_str(), leastTexts(screen.name));
    }
}

} // namespace

// Black on white is 21, the highest possible, and #767676 on white is the lightest grey that passes (both
// well known).
TEST_CASE("contrast is measured as the guidelines define it") {
    CHECK(contrast(qRgb(0, 0, 0), qRgb(255, 255, 255)) == doctest::Approx(21));
    CHECK(contrast(qRgb(0x76, 0x76, 0x76), qRgb(255, 255, 255)) == doctest::Approx(4.54).epsilon(0.002));
    CHECK(contrast(qRgb(9, 9, 9), qRgb(9, 9, 9)) == doctest::Approx(1));
}

TEST_CASE("every text of every screen has the contrast that AA requires, in both themes") {
    ScreenFixture fixture;
    checkEveryScreen(fixture);
    fixture.open("scales");
    for (const auto* side : {"grid", "weeks", "instrument"}) {
        fixture.find(QStringLiteral("scalesScreen"))->setProperty("side", QString::fromLatin1(side));
        checkBothThemes(fixture, side, 10);
    }
    fixture.open("drill");
    fixture.tap(Qt::Key_Space);
    fixture.play(8);
    checkBothThemes(fixture, "playing", 10);
    fixture.tap(Qt::Key_Escape);
    fixture.play(1);
    fixture.open("runThrough");
    fixture.room().runThrough()->start();
    checkBothThemes(fixture, "a run-through that is played", 5);
    fixture.room().runThrough()->markStop();
    fixture.room().runThrough()->finish(true);
    checkBothThemes(fixture, "a run-through that is looked over", 10);
}

TEST_CASE("in the smallest window every text has that contrast, too") {
    ScreenFixture fixture;
    fixture.resize(1024, 640);
    checkEveryScreen(fixture);
    fixture.open("scales");
    fixture.room().drillScale(false);
    checkBothThemes(fixture, "a scale's drill", 20);
}

TEST_CASE("a text without contrast is found") {
    ScreenFixture fixture;
    fixture.room().setScreen(QStringLiteral("help"));
    fixture.play(0.05);
    for (QQuickItem* item : fixture.shown())
        if (item->inherits("QQuickText") && item->property("text") == QStringLiteral("Help"))
            item->setProperty("color", QColor(0xf0, 0xea, 0xe0));
    CHECK_FALSE(measure(fixture).faint.isEmpty());
}

TEST_CASE("the first start has that contrast, too") {
    ScreenFixture fixture(true);
    checkBothThemes(fixture, "welcome", 8);
}
