// SPDX-License-Identifier: GPL-3.0-or-later
// What hands do out of habit: a click and then Space, a finger anywhere on the screen, another tab meanwhile.
#include "../screen_fixture.h"

#include <doctest/doctest.h>

#include <QTest>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::models::RunThroughModel;
using piolo::test::ScreenFixture;

namespace {

void type(ScreenFixture& fixture, const char* letters) {
    for (const char* letter = letters; *letter != 0; ++letter) QTest::keyClick(&fixture.window(), *letter);
}

struct AtTheDrill : ScreenFixture {
    AtTheDrill() { open("drill"); }
    [[nodiscard]] DrillModel& drill() { return *room().drill(); }
    [[nodiscard]] std::size_t facts() { return room().book().notebook().factCount(); }
    [[nodiscard]] std::size_t misses() {
        std::size_t count = 0;
        for (const auto& entry : room().book().notebook().passage(passage())->entries)
            count += entry.mark == Mark::missed ? 1 : 0;
        return count;
    }
    void startAndPlay() {
        tap(Qt::Key_Space);
        play(6);
        REQUIRE(drill().state() == DrillModel::State::Playing);
    }
};

} // namespace

TEST_CASE_FIXTURE(AtTheDrill, "after a click on any button of the stopped drill, Space starts") {
    for (const auto* button : {"slower", "faster", "drillTempo", "howToPlay", "howToPlayClose"}) {
        if (find(button) == nullptr) click("howToPlay");
        INFO(button);
        click(button);
        const std::size_t before = facts();
        const QString tempo = drill().text()->tempo();
        tap(Qt::Key_Space);
        play(0.1);
        CHECK(drill().state() == DrillModel::State::Playing);
        CHECK(drill().text()->tempo() == tempo);
        CHECK(facts() - before <= 1); // the tempo set by hand, which a start keeps
        tap(Qt::Key_Escape);
        play(0.5);
        REQUIRE(drill().state() == DrillModel::State::Stopped);
    }
}

TEST_CASE_FIXTURE(AtTheDrill, "a button reached by Tab is pressed by Space") {
    const QString before = drill().text()->tempo();
    press("slower");
    CHECK(drill().state() == DrillModel::State::Stopped);
    CHECK(drill().text()->tempo() != before);
}

TEST_CASE_FIXTURE(AtTheDrill, "while the click runs, a finger anywhere marks a miss as it goes down") {
    const std::vector<QPoint> places{
        {80, window().height() / 2}, {window().width() / 2, window().height() / 2}, {20, 20}, {500, 780}};
    for (const QPoint place : places) {
        startAndPlay();
        CAPTURE(place.x());
        const std::size_t before = misses();
        touch(place);
        play(0.5);
        CHECK(misses() == before + 1);
        play(8);
        touch({300, 300}, 1.0); // held, and marked long before it is lifted
        CHECK(misses() == before + 2);
        tap(Qt::Key_Escape);
        play(0.5);
    }
}

TEST_CASE_FIXTURE(AtTheDrill, "while the click runs, a click of the mouse marks a miss, with either button") {
    startAndPlay();
    for (const auto button : {Qt::LeftButton, Qt::RightButton}) {
        const std::size_t before = misses();
        QTest::mousePress(&window(), button, Qt::NoModifier, {100, 400});
        play(0.5);
        CHECK(misses() == before + 1);
        QTest::mouseRelease(&window(), button, Qt::NoModifier, {100, 400});
        play(12);
        CHECK(misses() == before + 1);
    }
}

TEST_CASE_FIXTURE(AtTheDrill, "Stop and Take back have a corner each, and touching them marks nothing") {
    for (const QSize size :
         {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080), QSize(600, 960), QSize(480, 640)}) {
        resize(size.width(), size.height());
        startAndPlay();
        for (const auto* corner : {"stop", "playingBack"}) {
            QQuickItem* const item = find(corner);
            REQUIRE(item != nullptr);
            CHECK(item->width() >= 64);
            CHECK(item->height() >= 64);
        }
        const std::size_t before = misses();
        touch({80, 300});
        play(0.3);
        REQUIRE(misses() == before + 1);
        touch(middleOf("playingBack"));
        play(0.3);
        CHECK(misses() == before);
        CHECK(drill().state() == DrillModel::State::Playing);
        touch(middleOf("stop"));
        play(0.5);
        CHECK(drill().state() == DrillModel::State::Stopped);
        CHECK(misses() == before);
    }
}

TEST_CASE_FIXTURE(AtTheDrill, "after a stop one line says what happened, and leads to the log") {
    CHECK(find("sitting") == nullptr);
    startAndPlay();
    play(20); // a clean run, and some bars
    tap(Qt::Key_Space);
    play(0.3);
    tap(Qt::Key_Escape);
    play(0.5);
    const QString said = drill().text()->sitting();
    CHECK(said.toStdString() == "2 runs: 1 clean, 1 missed in bar 42");
    REQUIRE(find("sitting") != nullptr);
    CHECK(find("sitting")->property("text").toString() == said);
    tap(Qt::Key_Backspace);
    play(0.3);
    CHECK(drill().text()->sitting() == "1 run: 1 clean");
    click("sitting");
    CHECK(room().screen() == "log");
}

TEST_CASE_FIXTURE(AtTheDrill, "a run-through goes on while another tab is shown, with its way back") {
    open("runThrough");
    tap(Qt::Key_Space);
    play(2);
    RunThroughModel& run = *room().runThrough();
    REQUIRE(run.state() == RunThroughModel::State::Playing);
    tap(Qt::Key_Space);
    const QString counted = run.counted();
    for (const auto* tab : {"tab-log", "tab-passages", "tab-help", "tab-settings", "tab-scales"}) {
        touch(middleOf(tab));
        INFO(tab);
        CHECK(run.state() == RunThroughModel::State::Playing);
        REQUIRE(find("now") != nullptr);
    }
    touch(middleOf("now"));
    CHECK(room().screen() == "runThrough");
    CHECK(find("now")->property("text").toString() == drill().text()->title());
    CHECK(run.counted() == counted);
    tap(Qt::Key_Return);
    play(0.1);
    REQUIRE(run.state() == RunThroughModel::State::Review);
    click("tab-log");
    CHECK(run.state() == RunThroughModel::State::Review);
    click("now");
    CHECK(find("throughKeep") != nullptr);
}

TEST_CASE_FIXTURE(AtTheDrill, "the drill has its way back, to where it was opened from") {
    CHECK(find("tab-drill") == nullptr);
    for (const auto* from : {"log", "passages", "scales"}) {
        click(QStringLiteral("tab-") + from);
        room().openDrill(QString::fromStdString(passage().text()));
        play(0.1);
        click("wayBack");
        CHECK(room().screen() == from);
    }
    room().openDrill(QString::fromStdString(passage().text()));
    play(0.1);
    QTest::keyClick(&window(), Qt::Key_Left, Qt::AltModifier);
    CHECK(room().screen() == "scales");
}

TEST_CASE_FIXTURE(AtTheDrill, "the passage in the drill is one click away on every other screen") {
    CHECK(find("now") == nullptr);
    const QString title = drill().text()->title();
    for (const auto* tab : {"tab-log", "tab-settings", "tab-help", "tab-scales", "tab-passages"}) {
        click(tab);
        REQUIRE(find("now") != nullptr);
        CHECK(find("now")->property("text").toString() == title);
        click("now");
        CHECK(room().screen() == "drill");
    }
}

TEST_CASE_FIXTURE(AtTheDrill, "a pause waits for its answer on every screen") {
    startAndPlay();
    for (int miss = 0; miss < 4 && drill().state() == DrillModel::State::Playing; ++miss) {
        tap(Qt::Key_Space);
        play(12);
    }
    REQUIRE(drill().state() == DrillModel::State::Paused);
    const std::size_t before = facts();
    click("tab-log");
    CHECK(drill().state() == DrillModel::State::Paused);
    REQUIRE(find("now") != nullptr);
    touch(middleOf("now"));
    CHECK(facts() == before);
    click("goOn");
    play(0.5);
    CHECK(drill().state() == DrillModel::State::Playing);
}

TEST_CASE_FIXTURE(ScreenFixture,
                  "the navigation is one stop of the Tab key, and the arrow keys go through it") {
    open("passages");
    QQuickItem* const first = find("tab-passages");
    first->forceActiveFocus(Qt::TabFocusReason);
    for (const auto* next : {"tab-scales", "tab-log", "tab-settings", "tab-help", "tab-passages"}) {
        QTest::keyClick(&window(), Qt::Key_Right);
        CHECK(window().activeFocusItem() == find(next));
    }
    QTest::keyClick(&window(), Qt::Key_Tab);
    CHECK_FALSE(window().activeFocusItem()->objectName().startsWith("tab-"));
}

TEST_CASE_FIXTURE(ScreenFixture, "a number reached by Tab is typed over") {
    open("passages");
    click("edit");
    QQuickItem* const start = find("field-start");
    REQUIRE(start != nullptr);
    QQuickItem* input = nullptr;
    for (QQuickItem* child : start->childItems())
        if (child->inherits("QQuickTextField")) input = child;
    REQUIRE(input != nullptr);
    input->forceActiveFocus(Qt::TabFocusReason);
    type(*this, "60");
    CHECK(input->property("text").toString() == "60");
}

TEST_CASE("the first passage's form is there again after a visit to another tab, until there is a passage") {
    ScreenFixture first(true);
    REQUIRE(first.find("begin") != nullptr);
    for (const auto* tab : {"tab-help", "tab-scales", "tab-log"}) {
        first.click(tab);
        CHECK(first.find("begin") == nullptr);
        first.click("tab-passages");
        CHECK(first.find("begin") != nullptr);
    }
    first.click("otherWays");
    CHECK(first.room().screen() == "passages");
    CHECK(first.find("musicFile") != nullptr);
}

TEST_CASE_FIXTURE(ScreenFixture, "letters typed one after the other choose from a list by its beginning") {
    open("scales");
    room().setScreen("passages"); // its grid is shown the next time
    room().setScreen("scales");
    play(0.1);
    QQuickItem* const kind = find("scaleKind");
    REQUIRE(kind != nullptr);
    QMetaObject::invokeMethod(kind, "takeKeys");
    type(*this, "dor");
    play(0.05);
    CHECK(room().scales()->choices()->kind() == "dorian");
    QTest::qWait(1100);
    type(*this, "alt");
    play(0.05);
    CHECK(room().scales()->choices()->kind() == "altered");
}
