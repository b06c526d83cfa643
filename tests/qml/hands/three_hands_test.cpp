// SPDX-License-Identifier: GPL-3.0-or-later
// A first day from the empty folder on, three times: with keys alone, with the mouse alone, and with one
// finger; in each shape of window and each language.
#include "../spoken_language.h"
#include "models/settings/language_table.h"
#include "novice.h"

#include <doctest/doctest.h>

#include <QTest>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::Hand;
using piolo::test::Novice;
using piolo::test::Spoken;

namespace {

/// With nothing defined, and not logged.
void justAClick(Novice& novice) {
    REQUIRE(novice.room().screen() == "welcome");
    novice.press("justAClick");
    REQUIRE(novice.room().screen() == "click");
    novice.atTheDrill("clickStart", Qt::Key_Space);
    novice.play(1);
    CHECK(novice.room().click()->sounds());
    novice.press("clickUp1");
    novice.press("tab-log");
    REQUIRE(novice.room().screen() == "log");
    CHECK(novice.room().click()->sounds());
    novice.press("now");
    REQUIRE(novice.room().screen() == "click");
    novice.atTheDrill("clickStart", Qt::Key_Space);
    CHECK_FALSE(novice.room().click()->sounds());
    CHECK(novice.room().book().notebook().factCount() == 0);
    novice.press("tab-passages");
}

void firstPassage(Novice& novice) {
    REQUIRE(novice.room().screen() == "welcome");
    if (novice.find("begin") == nullptr || novice.middleOf("begin").y() >= novice.window().height())
        QTest::keyClick(&novice.window(), Qt::Key_Return); // below the edge: the field's own key
    else
        novice.press("begin");
    novice.play(0.1);
    REQUIRE(novice.room().screen() == "drill");
}

void drill(Novice& novice) {
    novice.atTheDrill("start", Qt::Key_Space);
    novice.play(12); // past the count-in
    REQUIRE(novice.drill().state() == DrillModel::State::Playing);
    novice.mark();
    CHECK(novice.missed() == 1);
    novice.atTheDrill("playingBack", Qt::Key_Backspace);
    CHECK(novice.missed() == 0);
    novice.play(12);
    novice.mark();
    CHECK(novice.missed() == 1);
    novice.atTheDrill("stop", Qt::Key_Escape);
    CHECK(novice.drill().state() == DrillModel::State::Stopped);
    novice.press("howToPlay");
    CHECK(novice.find("howToPlayPanel") != nullptr);
    novice.press("howToPlayClose");
    CHECK(novice.find("howToPlayPanel") == nullptr);
    novice.press("sitting");
    CHECK(novice.room().screen() == "log");
}

void passagePage(Novice& novice) {
    novice.press("tab-passages");
    if (novice.find("passageSheet") == nullptr) novice.press("passageLine");
    REQUIRE(novice.find("passageSheet") != nullptr);
    novice.press("edit");
    REQUIRE(novice.find("save") != nullptr);
    novice.press("revert");
    REQUIRE(novice.find("passageSheet") != nullptr);
    novice.press("drillIt");
    REQUIRE(novice.room().screen() == "drill");
    novice.press("wayBack");
    CHECK(novice.room().screen() == "passages");
}

void firstScale(Novice& novice) {
    novice.press("tab-scales");
    novice.chooseTheOboe();
    if (novice.find("toGrid") != nullptr) novice.press("toGrid");
    REQUIRE(novice.find("cell-0-0") != nullptr);
    novice.press("drillScale");
    REQUIRE(novice.room().screen() == "drill");
    novice.atTheDrill("start", Qt::Key_Space);
    novice.play(3);
    CHECK(novice.drill().state() == DrillModel::State::Playing);
    novice.atTheDrill("stop", Qt::Key_Escape);
    novice.press("wayBack");
    CHECK(novice.room().screen() == "scales");
}

/// The list of passages; a narrow window may show one of them in its place.
void toThePassages(Novice& novice) {
    novice.press("tab-passages");
    if (novice.find("toList") != nullptr) novice.press("toList");
}

void barsFromAScore(Novice& novice) {
    toThePassages(novice);
    novice.press("musicFile");
    novice.openTheScore("music-choose");
    REQUIRE(novice.find("music-take") != nullptr);
    novice.press("music-take");
    novice.press("drillIt");
    REQUIRE(novice.room().screen() == "drill");
    const auto& notebook = novice.room().book().notebook();
    REQUIRE(notebook.passages().size() == 2);
    CHECK_FALSE(notebook.passage(notebook.passages().back())->passage.notes.empty());
    CHECK(novice.find("staffReady") != nullptr);
    novice.press("wayBack");
}

void inTurn(Novice& novice) {
    toThePassages(novice);
    if (novice.find("inTurn") != nullptr)
        novice.press("inTurn");
    else
        novice.choose("more", "set");
    REQUIRE(novice.room().screen() == "set");
    novice.press("pick-0");
    novice.press("pick-1");
    novice.press("startSet");
    REQUIRE(novice.drill().state() == DrillModel::State::Playing);
    CHECK_FALSE(novice.room().set()->turnText().isEmpty());
    novice.atTheDrill("stop", Qt::Key_Escape);
    CHECK(novice.room().screen() == "set");
    CHECK(novice.find("result-1") != nullptr);
    novice.press("wayBack");
    CHECK(novice.room().screen() == "passages");
}

/// What was marked at the drill is changed in the log, and changed again.
void changeAMark(Novice& novice) {
    novice.press("tab-log");
    const int before = novice.missed();
    REQUIRE(before == 1);
    novice.press("logLine");
    novice.press("setClean");
    CHECK(novice.missed() == before - 1);
    novice.press("setMissed");
    CHECK(novice.missed() == before);
}

void everyScreen(Novice& novice) {
    for (const auto* tab : {"tab-scales", "tab-log", "tab-settings", "tab-help", "tab-passages"}) {
        novice.press(QString::fromLatin1(tab));
        CHECK("tab-" + novice.room().screen() == QString::fromLatin1(tab));
    }
}

} // namespace

TEST_CASE("a first day with keys, with the mouse and with a finger, in every window and language") {
    for (const models::Language& language : models::languageTable)
        for (const QSize size : {QSize(1280, 800), QSize(600, 960), QSize(1920, 1080), QSize(480, 640)})
            for (const Hand hand : {Hand::keys, Hand::mouse, Hand::finger}) {
                const Spoken spoken(language.code);
                Novice novice(hand);
                novice.resize(size.width(), size.height());
                novice.play(0.1);
                CAPTURE(std::string(language.code));
                CAPTURE(size.width());
                CAPTURE(static_cast<int>(hand));
                justAClick(novice);
                firstPassage(novice);
                drill(novice);
                passagePage(novice);
                changeAMark(novice);
                barsFromAScore(novice);
                inTurn(novice);
                everyScreen(novice);
                firstScale(novice);
                CHECK(novice.warnings().join("\n").toStdString() == "");
            }
}
