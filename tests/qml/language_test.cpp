// SPDX-License-Identifier: GPL-3.0-or-later
// The screens in every language.
#include "models/room/help_chapter.h"
#include "models/room/screen.h"
#include "models/settings/language.h"
#include "models/settings/language_table.h"
#include "screen_fixture.h"
#include "text_walk.h"

#include <doctest/doctest.h>

#include <QLocale>
#include <QQmlComponent>
#include <QTest>

using namespace piolo;
using piolo::test::cutTexts;
using piolo::test::ScreenFixture;

namespace {

/// What the player wrote, and the notes of a scale, of which a small window shows one line.
const QStringList own{"River Suite", "Harbour Dance", "Do5 Re5"};

/// The other tests are in the language of the source, with plain numbers.
struct Spoken {
    explicit Spoken(const char* code) { models::speak(QString::fromLatin1(code)); }
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;
    ~Spoken() {
        models::speak(QStringLiteral("en"));
        QLocale::setDefault(QLocale::c());
    }
};

void checkWhole(ScreenFixture& stage, const std::string& place) {
    for (const QSize size : {QSize(1024, 640), QSize(1280, 800), QSize(1920, 1080)}) {
        stage.resize(size.width(), size.height());
        QString cut = "not looked at";
        for (int frame = 0; frame < 5 && !cut.isEmpty(); ++frame) { // lists are laid out during the first
                                                                    // frames
            static_cast<void>(stage.shot());
            cut = cutTexts(stage.window(), own).join("\n");
        }
        CAPTURE(place);
        CAPTURE(size.width());
        CHECK(stage.warnings().join("\n").toStdString() == "");
        CHECK(cut.toStdString() == "");
    }
}

void walkTheDrill(ScreenFixture& stage) {
    stage.room().openDrill(QString::fromStdString(stage.passage().text()));
    stage.play(0.1);
    checkWhole(stage, "drill");
    stage.tap(Qt::Key_Space);
    stage.play(6);
    checkWhole(stage, "playing");
    const auto paused = [&] { return stage.room().drill()->state() == models::DrillModel::State::Paused; };
    for (int miss = 0; miss < 6 && !paused(); ++miss) {
        stage.tap(Qt::Key_Space);
        stage.play(10);
    }
    CHECK(paused());
    checkWhole(stage, "offer");
    stage.tap(Qt::Key_Escape);
    stage.play(1);
}

void walkTheScreens(ScreenFixture& stage) {
    stage.room().setScreen("passages");
    stage.play(0.1);
    checkWhole(stage, "passages");
    for (const char* card : {"musicFile", "onPaper", "passageFiles"}) {
        stage.press(QLatin1String(card));
        checkWhole(stage, card);
        stage.room().setScreen("log");
        stage.room().setScreen("passages");
        stage.play(0.1);
    }
    stage.room().setScreen("scales");
    stage.play(0.1);
    checkWhole(stage, "the choice of an instrument");
    for (const models::Screen& screen : models::screenTable) {
        stage.open(screen.name);
        checkWhole(stage, std::string(screen.name));
    }
    stage.open("scales");
    stage.room().scales()->choices()->setInstrument(QStringLiteral("clarinet in B flat"));
    stage.play(0.1);
    for (const char* side : {"grid", "weeks"}) {
        stage.press(QStringLiteral("scaleSides-") + QLatin1String(side));
        checkWhole(stage, side);
    }
    stage.room().setScreen("help");
    stage.play(0.1);
    for (const models::HelpChapter& chapter : models::helpChapterTable) {
        stage.press(QStringLiteral("chapter-") + QString::fromStdString(std::string(chapter.name)));
        checkWhole(stage, "chapter " + std::string(chapter.name));
    }
}

} // namespace

TEST_CASE("in every language no text of a screen is cut off in a small window") {
    for (const models::Language& language : models::languageTable) {
        CAPTURE(std::string(language.code));
        const Spoken spoken(language.code);
        ScreenFixture stage;
        walkTheDrill(stage);
        walkTheScreens(stage);
        CHECK(stage.warnings().join("\n").toStdString() == "");
        ScreenFixture first(true);
        checkWhole(first, "welcome");
    }
}

TEST_CASE("a text that is cut off, stands out of its button, lies over another or is an id is found") {
    ScreenFixture stage;
    const auto found = [&](const char* source) {
        QQmlComponent component(qmlEngine(stage.find("screens")));
        component.setData(source, QUrl());
        const std::unique_ptr<QObject> made(component.create());
        REQUIRE(made != nullptr);
        qobject_cast<QQuickItem*>(made.get())->setParentItem(stage.window().contentItem());
        static_cast<void>(stage.shot());
        return cutTexts(stage.window(), own).join("\n");
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
    ScreenFixture stage;
    stage.room().setScreen("settings");
    stage.play(0.1);
    const auto tab = [&] { return stage.find("tab-settings")->property("text").toString(); };
    CHECK(tab() == "Settings");
    stage.press("language-de");
    stage.play(0.1);
    CHECK(tab() == "Einstellungen");
    REQUIRE(stage.window().activeFocusItem() != nullptr);
    CHECK(stage.window().activeFocusItem()->objectName().toStdString() == "language-de");
    stage.press("language-it");
    stage.play(0.1);
    CHECK(tab() == "Impostazioni");
    CHECK(stage.warnings().join("\n").toStdString() == "");
}

TEST_CASE("F1 opens the help at the chapter of the screen, and Esc leads back") {
    ScreenFixture stage;
    const auto chapter = [&] {
        for (QQuickItem* item : stage.shown())
            if (item->objectName().startsWith("chapter-") && item->property("here").toBool())
                return item->objectName();
        return QString();
    };
    for (const models::HelpChapter& wanted : models::helpChapterTable) {
        if (wanted.screen.empty() || !wanted.part.empty()) continue;
        CAPTURE(wanted.name);
        stage.open(wanted.screen);
        const QString shown = stage.room().screen();
        CHECK(shown.toStdString() == wanted.screen);
        QTest::keyClick(&stage.window(), Qt::Key_F1);
        stage.play(0.1);
        CHECK(stage.room().screen() == "help");
        CHECK(chapter().toStdString() == "chapter-" + std::string(wanted.name));
        QTest::keyClick(&stage.window(), Qt::Key_Escape);
        stage.play(0.1);
        CHECK(stage.room().screen() == shown);
    }
    CHECK(stage.warnings().join("\n").toStdString() == "");
}

TEST_CASE("while the click runs, F1 does nothing") {
    ScreenFixture stage;
    stage.room().openDrill(QString::fromStdString(stage.passage().text()));
    stage.play(0.1);
    stage.tap(Qt::Key_Space);
    stage.play(6);
    QTest::keyClick(&stage.window(), Qt::Key_F1);
    stage.play(0.1);
    CHECK(stage.room().screen() == "drill");
    CHECK(stage.room().drill()->state() == models::DrillModel::State::Playing);
}
