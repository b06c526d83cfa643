// SPDX-License-Identifier: GPL-3.0-or-later
// The screens in every language.
#include "../screen_fixture.h"
#include "../spoken_language.h"
#include "../text_walk.h"
#include "models/room/help_chapter.h"
#include "models/room/screen.h"
#include "models/settings/language.h"
#include "models/settings/language_table.h"

#include <doctest/doctest.h>

#include <QLocale>
#include <QQmlComponent>
#include <QTest>

using namespace piolo;
using piolo::test::cutTexts;
using piolo::test::ScreenFixture;
using piolo::test::Spoken;

namespace {

/// What the player wrote, and the notes of a scale, of which a small window shows one line.
const QStringList own{"River Suite", "Harbour Dance", "Do5 Re5"};

void checkWhole(ScreenFixture& fixture, const std::string& place) {
    for (const QSize size :
         {QSize(480, 640), QSize(600, 960), QSize(1024, 640), QSize(1280, 800), QSize(1920, 1080)}) {
        fixture.resize(size.width(), size.height());
        QString cut = "not looked at";
        for (int frame = 0; frame < 5 && !cut.isEmpty(); ++frame) { // lists are laid out during the first
                                                                    // frames
            static_cast<void>(fixture.shot());
            cut = cutTexts(fixture.window(), own).join("\n");
        }
        CAPTURE(place);
        CAPTURE(size.width());
        CHECK(fixture.warnings().join("\n").toStdString() == "");
        CHECK(cut.toStdString() == "");
    }
}

void walkTheDrill(ScreenFixture& fixture) {
    fixture.room().openDrill(QString::fromStdString(fixture.passage().text()));
    fixture.play(0.1);
    checkWhole(fixture, "drill");
    fixture.click("howToPlay");
    checkWhole(fixture, "how to play it");
    fixture.tap(Qt::Key_Space);
    fixture.play(6);
    CHECK(fixture.room().drill()->state() == models::DrillModel::State::Playing);
    checkWhole(fixture, "playing");
    const auto paused = [&] { return fixture.room().drill()->state() == models::DrillModel::State::Paused; };
    for (int miss = 0; miss < 6 && !paused(); ++miss) {
        fixture.tap(Qt::Key_Space);
        fixture.play(10);
    }
    CHECK(paused());
    checkWhole(fixture, "offer");
    fixture.tap(Qt::Key_Escape);
    fixture.play(1);
}

void walkTheScreens(ScreenFixture& fixture) {
    fixture.room().setScreen("passages");
    fixture.play(0.1);
    checkWhole(fixture, "passages");
    for (const char* card : {"musicFile", "edit", "paper", "files"}) {
        if (fixture.find(QLatin1String(card)) != nullptr)
            fixture.press(QLatin1String(card));
        else
            fixture.choose("more", QLatin1String(card));
        checkWhole(fixture, card);
        fixture.room().setScreen("log");
        fixture.room().setScreen("passages");
        fixture.play(0.1);
    }
    fixture.room().setScreen("scales");
    fixture.play(0.1);
    checkWhole(fixture, "the choice of an instrument");
    for (const models::Screen& screen : models::screenTable) {
        fixture.open(screen.name);
        checkWhole(fixture, std::string(screen.name));
    }
    fixture.open("scales");
    fixture.room().scales()->choices()->setInstrument(QStringLiteral("clarinet in B flat"));
    fixture.play(0.1);
    for (const char* side : {"grid", "weeks"}) {
        fixture.press(QStringLiteral("scaleSides-") + QLatin1String(side));
        checkWhole(fixture, side);
    }
    fixture.room().setScreen("help");
    fixture.play(0.1);
    for (const models::HelpChapter& chapter : models::helpChapterTable) {
        fixture.press(QStringLiteral("chapter-") + QString::fromStdString(std::string(chapter.name)));
        checkWhole(fixture, "chapter " + std::string(chapter.name));
    }
}

} // namespace

TEST_CASE("in every language no text of a screen is cut off in a small window") {
    for (const models::Language& language : models::languageTable) {
        CAPTURE(std::string(language.code));
        const Spoken spoken(language.code);
        ScreenFixture fixture;
        walkTheDrill(fixture);
        walkTheScreens(fixture);
        CHECK(fixture.warnings().join("\n").toStdString() == "");
        ScreenFixture first(true);
        checkWhole(first, "welcome");
    }
}

TEST_CASE("a text that is cut off, stands out of its button, lies over another or is an id is found") {
    ScreenFixture fixture;
    const auto found = [&](const char* source) {
        QQmlComponent component(qmlEngine(fixture.find("screens")));
        component.setData(source, QUrl());
        const std::unique_ptr<QObject> made(component.create());
        REQUIRE(made != nullptr);
        qobject_cast<QQuickItem*>(made.get())->setParentItem(fixture.window().contentItem());
        static_cast<void>(fixture.shot());
        return cutTexts(fixture.window(), own).join("\n");
    };
    CHECK_FALSE(found("import QtQuick\nText { text: 'Schlussnote' }").contains("cut off"));
    CHECK(found("import QtQuick\nText { y: 600; width: 30; elide: Text.ElideRight; text: 'Schlussnote' }")
              .contains("cut off: Schlussnote"));
    CHECK(found("import QtQuick\nText { y: 600; text: 'At log.day.figures' }")
              .contains("not translated: At log.day.figures"));
    CHECK(found("import QtQuick\nimport QtQuick.Templates as T\n"
                "T.Button { y: 600; width: 40; height: 40; contentItem: Text { text: 'Schlussnote' } }")
              .contains("stands out: Schlussnote"));
    CHECK(found("import QtQuick\nItem { y: 600; Text { text: 'Auftakt' } Text { x: 10; text: 'Takt' } }")
              .contains("over each other: Auftakt | Takt"));
}

TEST_CASE("a language that is chosen is spoken at once, and the choice keeps the focus") {
    const Spoken before("en");
    ScreenFixture fixture;
    fixture.room().setScreen("settings");
    fixture.play(0.1);
    const auto tab = [&] { return fixture.find("tab-settings")->property("text").toString(); };
    CHECK(tab() == "Settings");
    fixture.press("language-de");
    fixture.play(0.1);
    CHECK(tab() == "Einstellungen");
    REQUIRE(fixture.window().activeFocusItem() != nullptr);
    CHECK(fixture.window().activeFocusItem()->objectName().toStdString() == "language-de");
    fixture.press("language-it");
    fixture.play(0.1);
    CHECK(tab() == "Impostazioni");
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("F1 opens the help at the chapter of the screen, and Esc leads back") {
    ScreenFixture fixture;
    const auto chapter = [&] {
        for (QQuickItem* item : fixture.shown())
            if (item->objectName().startsWith("chapter-") && item->property("here").toBool())
                return item->objectName();
        return QString();
    };
    for (const models::HelpChapter& wanted : models::helpChapterTable) {
        if (wanted.screen.empty() || !wanted.part.empty()) continue;
        CAPTURE(wanted.name);
        fixture.open(wanted.screen);
        const QString shown = fixture.room().screen();
        CHECK(shown.toStdString() == wanted.screen);
        QTest::keyClick(&fixture.window(), Qt::Key_F1);
        fixture.play(0.1);
        CHECK(fixture.room().screen() == "help");
        CHECK(chapter().toStdString() == "chapter-" + std::string(wanted.name));
        QTest::keyClick(&fixture.window(), Qt::Key_Escape);
        fixture.play(0.1);
        CHECK(fixture.room().screen() == shown);
    }
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("while the click runs, F1 does nothing") {
    ScreenFixture fixture;
    fixture.room().openDrill(QString::fromStdString(fixture.passage().text()));
    fixture.play(0.1);
    fixture.tap(Qt::Key_Space);
    fixture.play(6);
    QTest::keyClick(&fixture.window(), Qt::Key_F1);
    fixture.play(0.1);
    CHECK(fixture.room().screen() == "drill");
    CHECK(fixture.room().drill()->state() == models::DrillModel::State::Playing);
}
