// SPDX-License-Identifier: GPL-3.0-or-later
// Just a click, by keys, by mouse and by touch: from the first screen, from the passages and from the drill.
#include "../screen_fixture.h"

#include <doctest/doctest.h>

#include <QAccessible>
#include <QMouseEvent>
#include <QTest>

#include <chrono>
#include <cstdlib>

using namespace piolo;
using piolo::models::ClickModel;
using piolo::models::DrillModel;
using piolo::models::RunThroughModel;
using piolo::test::ScreenFixture;

namespace {

struct AtTheClick : ScreenFixture {
    AtTheClick() {
        open("click");
        before = facts();
    }
    [[nodiscard]] ClickModel& click() { return *room().click(); }
    [[nodiscard]] std::size_t facts() { return room().book().notebook().factCount(); }
    [[nodiscard]] QQuickItem* figure() { return find("clickTempo"); }
    void type(const char* text) {
        for (const char* letter = text; *letter != 0; ++letter) QTest::keyClick(&window(), *letter);
    }
    using ScreenFixture::click;
    void press(const char* button) { ScreenFixture::click(button); }
    std::size_t before = 0;
};

} // namespace

TEST_CASE("from an empty folder to the first click are two keys") {
    ScreenFixture first(true);
    REQUIRE(first.room().screen() == "welcome");
    first.tap(Qt::Key_F2); // one, also while the name of a passage could be typed
    CHECK(first.room().screen() == "click");
    first.tap(Qt::Key_Space); // two
    first.play(2);
    CHECK(first.room().click()->sounds());
    CHECK(first.room().click()->beats()->beat() >= 0);
    CHECK(first.room().book().notebook().factCount() == 0);
}

TEST_CASE("the key of just a click is on its button on the first screen, and the button does the same") {
    ScreenFixture first(true);
    REQUIRE(first.find("justAClick") != nullptr);
    CHECK(first.find("justAClick")->property("key").toString() == "F2");
    first.click("justAClick");
    CHECK(first.room().screen() == "click");
}

TEST_CASE_FIXTURE(AtTheClick, "by keys: start, faster, slower, tap, stop; and no fact is written") {
    tap(Qt::Key_Space);
    play(1);
    CHECK(click().sounds());
    const QString tempo = click().tempo();
    tap(Qt::Key_Up);
    CHECK(click().tempo() == QString::number(tempo.toInt() + 1));
    tap(Qt::Key_Down);
    CHECK(click().tempo() == tempo);
    for (int beat = 0; beat < 4; ++beat) {
        tap(Qt::Key_T);
        play(0.5);
    }
    CHECK(click().tempo() == "120");
    for (int beat = 0; beat < 4; ++beat) {
        tap(Qt::Key_PageUp); // the other pedal
        play(0.6);
    }
    CHECK(click().tempo() == "100");
    tap(Qt::Key_PageDown);
    CHECK_FALSE(click().sounds());
    tap(Qt::Key_Space);
    tap(Qt::Key_Escape);
    CHECK_FALSE(click().sounds());
    CHECK(facts() == before);
}

TEST_CASE_FIXTURE(AtTheClick, "by mouse: rungs, taps, start and stop") {
    const int tempo = click().tempo().toInt();
    press("clickUp5");
    press("clickUp1");
    CHECK(click().tempo().toInt() == tempo + 6);
    press("clickDown5");
    press("clickDown1");
    CHECK(click().tempo().toInt() == tempo);
    for (int beat = 0; beat < 3; ++beat) {
        press("clickTap"); // and 0.05 s
        play(0.7);
    }
    CHECK(click().tempo() == "80");
    press("clickStart");
    play(2);
    CHECK(click().sounds());
    tap(Qt::Key_Space); // also after a click on the button
    CHECK_FALSE(click().sounds());
}

TEST_CASE_FIXTURE(AtTheClick, "by touch: taps of any length, start and stop") {
    for (const double held : {0.05, 0.4, 0.1, 0.3}) {
        touch(middleOf("clickTap"), held); // and 0.05 s
        play(0.455 - held);                // whole blocks
    }
    CHECK(click().tempo() != "72"); // touches have real timestamps, the sound has not
    touch(middleOf("clickStart"));
    play(1);
    CHECK(click().sounds());
    touch(middleOf("clickStart"));
    CHECK_FALSE(click().sounds());
    CHECK(facts() == before);
}

TEST_CASE_FIXTURE(AtTheClick,
                  "the large figure is typed over, by Tab and by mouse, and keys go on working in it") {
    figure()->forceActiveFocus(Qt::TabFocusReason);
    play(0.05);
    type("96");
    QTest::keyClick(&window(), Qt::Key_Return);
    CHECK(click().tempo() == "96");
    CHECK_FALSE(figure()->hasActiveFocus());
    press("clickTempo");
    type("72");
    QTest::keyClick(&window(), Qt::Key_Return);
    CHECK(click().tempo() == "72");
    press("clickTempo");
    for (const auto key : {Qt::Key_Space, Qt::Key_Up, Qt::Key_T}) tap(key);
    CHECK(click().sounds());
    CHECK(click().tempo() == "73");
    CHECK(figure()->property("text").toString() == "73");
    tap(Qt::Key_PageDown);
    CHECK_FALSE(click().sounds());
    press("clickTempo");
    type("5"); // no tempo
    QTest::keyClick(&window(), Qt::Key_Return);
    CHECK(click().tempo() == "73");
    CHECK(figure()->property("text").toString() == "73");
}

TEST_CASE_FIXTURE(AtTheClick, "the beats that sound are shown, also when the meter changes at a bar") {
    click().type("120");
    click().setMeter("3/4");
    CHECK(click().beats()->beats() == 3);
    tap(Qt::Key_Space);
    play(1.75); // the first beat of the second bar, 100 ms after it was rendered
    CHECK(click().beats()->beat() == 0);
    click().setMeter("5/8");
    CHECK(click().beats()->beats() == 3); // until the bar ends
    play(1.5);
    CHECK(click().beats()->beats() == 5);
    CHECK(click().beats()->groupStarts(3));
}

TEST_CASE_FIXTURE(AtTheClick, "it goes on while another screen is shown, with its way back") {
    tap(Qt::Key_Space);
    play(1);
    for (const auto* tab : {"tab-log", "tab-passages", "tab-scales", "tab-help", "tab-settings"}) {
        INFO(tab);
        touch(middleOf(tab));
        play(0.5);
        CHECK(click().sounds());
        REQUIRE(find("now") != nullptr);
        CHECK(find("now")->property("text").toString().contains(click().tempo()));
    }
    press("now");
    CHECK(room().screen() == "click");
    CHECK(click().sounds());
}

TEST_CASE_FIXTURE(AtTheClick, "a drill and a run-through end it") {
    tap(Qt::Key_Space);
    play(1);
    open("drill");
    CHECK(click().sounds());
    tap(Qt::Key_Space);
    play(0.5);
    CHECK(room().drill()->state() == DrillModel::State::Playing);
    CHECK_FALSE(click().sounds());
    tap(Qt::Key_Escape);
    play(0.5);
    open("click");
    tap(Qt::Key_Space);
    play(0.5);
    CHECK(click().sounds());
    open("runThrough");
    tap(Qt::Key_Space);
    CHECK(room().runThrough()->state() == RunThroughModel::State::Playing);
    CHECK_FALSE(click().sounds());
}

TEST_CASE_FIXTURE(AtTheClick, "from the drill it has the passage's tempo, meter and subdivision") {
    open("drill");
    ScreenFixture::click("howToPlay");
    find("justAClick")->forceActiveFocus(Qt::TabFocusReason); // scrolls it into view
    play(0.05);
    ScreenFixture::click("justAClick");
    CHECK(room().screen() == "click");
    CHECK(click().tempo() == room().drill()->text()->tempo());
    CHECK(click().meter() == "4/4");
    CHECK(click().subdivision() == 4);
    CHECK(find("now") != nullptr); // the way back to the drill
}

TEST_CASE_FIXTURE(AtTheClick, "make a passage of this fills in the form") {
    click().setMeter("6/8");
    click().setSubdivision(3);
    click().type("112.5");
    press("clickKeep");
    CHECK(room().screen() == "passages");
    const auto draft = room().editor()->draft();
    CHECK(room().editor()->passage() == "");
    CHECK(draft["meter"].toString() == "6/8");
    CHECK(draft["subdivision"].toInt() == 3);
    CHECK(draft["start"].toString() == "112.5");
    CHECK(draft["target"].toString() == "112.5");
    CHECK(room().editor()->valid());
    CHECK(facts() == before);
}

TEST_CASE("make a passage of this leads to the first passage's form while there is none") {
    ScreenFixture first(true);
    first.open("click");
    first.room().click()->type("54");
    first.click("clickKeep");
    CHECK(first.room().screen() == "welcome");
    CHECK(first.room().editor()->draft()["start"].toString() == "54");
}

TEST_CASE_FIXTURE(ScreenFixture,
                  "where a tempo is asked for, it can be tapped, by the moments of the presses") {
    room().edit({}, false);
    play(0.1);
    for (const std::string field : {"start", "target", "floor"}) {
        CAPTURE(field);
        const QPoint place = middleOf(QString::fromStdString("tap-" + field));
        const auto now = std::chrono::steady_clock::now().time_since_epoch() / std::chrono::milliseconds(1);
        for (const int ago : {250, 50}) { // 200 ms apart, handled at once
            for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
                QMouseEvent event(type, place, window().mapToGlobal(place), Qt::LeftButton,
                                  type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton,
                                  Qt::NoModifier);
                event.setTimestamp(static_cast<quint64>(now - ago));
                QCoreApplication::sendEvent(&window(), &event);
            }
        }
        const int tapped = room().editor()->draft()[QString::fromStdString(field)].toString().toInt();
        CHECK(std::abs(tapped - 300) <= 2); // timestamps are whole milliseconds
    }
}

TEST_CASE_FIXTURE(ScreenFixture,
                  "the tempo of the stopped drill is tapped where it is typed, and its keys are "
                  "the drill's again after that") {
    open("drill");
    DrillModel& drill = *room().drill();
    CHECK(find("drillTap") == nullptr);
    click("drillTempo");
    REQUIRE(find("drillTap") != nullptr);
    for (int beat = 0; beat < 4; ++beat) {
        tap(Qt::Key_T);
        play(0.6);
    }
    CHECK(drill.text()->tempo() == "100");
    CHECK(drill.state() == DrillModel::State::Stopped); // not a try
    play(3);
    for (int beat = 0; beat < 4; ++beat) {
        click("drillTap"); // and 0.05 s
        play(0.7);
    }
    CHECK(drill.text()->tempo() == "80");
    CHECK(find("drillTempo")->hasActiveFocus());
    CHECK(find("drillTempo")->property("text").toString() == "80");
    play(3);
    for (int beat = 0; beat < 2; ++beat) {
        QAccessible::queryAccessibleInterface(find("drillTap"))
            ->actionInterface()
            ->doAction(QAccessibleActionInterface::pressAction());
        play(0.3);
    }
    CHECK(drill.text()->tempo() == "200");
    QTest::keyClick(&window(), Qt::Key_Return);
    CHECK_FALSE(find("drillTempo")->hasActiveFocus());
    tap(Qt::Key_T);
    play(0.5);
    CHECK(drill.state() == DrillModel::State::Playing); // a try
    CHECK(warnings().join("\n").toStdString() == "");
}

TEST_CASE_FIXTURE(ScreenFixture,
                  "the tempo of the stopped drill can be typed, within the limits of slower and faster") {
    open("drill");
    DrillModel& drill = *room().drill();
    CHECK(drill.typeTempo("83.5"));
    CHECK(drill.text()->tempo() == "83.5");
    CHECK_FALSE(drill.typeTempo("9"));
    CHECK_FALSE(drill.typeTempo("fast"));
    CHECK(drill.text()->tempo() == "83.5");
    tap(Qt::Key_Space);
    play(3);
    REQUIRE(drill.state() == DrillModel::State::Playing);
    drill.typeTempo("120"); // not while it runs
    CHECK(drill.text()->tempo() == "83.5");
}
