// SPDX-License-Identifier: GPL-3.0-or-later
// Settings and help from a phone's width up, in every language: one column when narrow, no text cut off, and
// every control large enough for a finger.
#include "models/room/help_chapter.h"
#include "models/settings/language.h"
#include "models/settings/language_table.h"
#include "screen_fixture.h"
#include "text_walk.h"

#include <doctest/doctest.h>

#include <QLocale>
#include <QTest>

using namespace piolo;
using test::ScreenFixture;

namespace {

constexpr qreal finger = 44;

/// Tall windows show all of the settings at once.
constexpr std::array sizes{QSize(480, 640), QSize(480, 3200), QSize(600, 960), QSize(1280, 800),
                           QSize(1920, 1080)};

bool isPressed(const QQuickItem& item) {
    return item.inherits("QQuickAbstractButton") || item.inherits("QQuickComboBox") ||
           item.inherits("QQuickSpinBox") || item.inherits("QQuickSlider") ||
           item.inherits("QQuickTextField");
}

QStringList tooSmall(const ScreenFixture& fixture) {
    QStringList small;
    for (const QQuickItem* item : fixture.shown()) {
        if (!isPressed(*item) || !item->isEnabled()) continue;
        const QSizeF size = item->mapRectToScene(item->boundingRect()).size();
        if (size.width() < finger || size.height() < finger)
            small << QStringLiteral("%1 %2: %3×%4")
                         .arg(item->objectName(), item->property("text").toString())
                         .arg(size.width())
                         .arg(size.height());
    }
    return small;
}

void checkSize(ScreenFixture& fixture, QSize size) {
    fixture.resize(size.width(), size.height());
    QString cut = "not looked at";
    for (int frame = 0; frame < 5 && !cut.isEmpty(); ++frame) { // lists are laid out during the first frames
        static_cast<void>(fixture.shot());
        cut = test::cutTexts(fixture.window(), {}).join("\n");
    }
    CAPTURE(size.width());
    CAPTURE(size.height());
    CHECK(cut.toStdString() == "");
    CHECK(tooSmall(fixture).join("\n").toStdString() == "");
}

void checkSettings(ScreenFixture& fixture) {
    fixture.open("settings");
    fixture.press("moreLevels-head");
    for (const QSize size : sizes) checkSize(fixture, size);
}

void checkHelp(ScreenFixture& fixture) {
    fixture.open("help");
    for (const models::HelpChapter& chapter : models::helpChapterTable) {
        fixture.resize(1280, 800);
        fixture.press(QStringLiteral("chapter-") + QString::fromStdString(std::string(chapter.name)));
        CAPTURE(std::string(chapter.name));
        for (const QSize size : sizes) checkSize(fixture, size);
    }
}

} // namespace

TEST_CASE("settings and help are whole at every width, in every language") {
    for (const models::Language& language : models::languageTable) {
        CAPTURE(std::string(language.code));
        models::speak(QString::fromLatin1(language.code));
        ScreenFixture fixture;
        checkSettings(fixture);
        checkHelp(fixture);
        CHECK(fixture.warnings().join("\n").toStdString() == "");
    }
    models::speak(QStringLiteral("en"));
    QLocale::setDefault(QLocale::c());
}

TEST_CASE_FIXTURE(ScreenFixture, "in a narrow window the cards of the settings are in one column") {
    open("settings");
    const auto left = [this](const char* name) { return find(QLatin1String(name))->mapToScene({0, 0}).x(); };
    CHECK(left("gap") > left("voice"));
    resize(480, 640);
    static_cast<void>(shot());
    CHECK(left("gap") == doctest::Approx(left("voice")));
}

TEST_CASE_FIXTURE(ScreenFixture,
                  "in a narrow window the chapters of the help drop down, by keys and by touch") {
    resize(480, 640);
    open("help");
    CHECK(find("chapter-scales") == nullptr);
    QQuickItem* const chapters = find("chapters");
    REQUIRE(chapters != nullptr);
    QMetaObject::invokeMethod(chapters, "takeKeys");
    const QString before = chapters->property("chosenText").toString();
    QTest::keyClick(&window(), Qt::Key_Down);
    CHECK(chapters->property("chosenText").toString() != before);
    touch(middleOf("chapters"));
    QTest::keyClick(&window(), Qt::Key_Home);
    QTest::keyClick(&window(), Qt::Key_Return);
    CHECK(chapters->property("chosenText").toString() != "");
    resize(1280, 800);
    CHECK(find("chapter-scales") != nullptr);
}
