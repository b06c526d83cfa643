// SPDX-License-Identifier: GPL-3.0-or-later
// A set from choosing its passages to what it made of them, by keys, by mouse and by touch.
#include "../screen_fixture.h"

#include <doctest/doctest.h>

#include <QTest>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::ScreenFixture;

namespace {

struct InTurn : ScreenFixture {
    InTurn() {
        for (int i = 0; i < 3; ++i) add("March of the Lamps, " + std::to_string(i + 1));
        open("set");
    }
    void add(const std::string& name) {
        Passage passage;
        passage.music.bars = 1;
        room().book().record(
            PassageFact{room().book().newId(), Title{name, {}}, passage.music, passage.tempi});
    }
    [[nodiscard]] models::SetModel& set() { return *room().set(); }
    [[nodiscard]] DrillModel::State state() { return room().drill()->state(); }
    [[nodiscard]] std::string text(const char* name) {
        const QQuickItem* const item = find(name);
        return item == nullptr ? "" : item->property("text").toString().toStdString();
    }
    /// Plays until that is announced; false if it is not within two minutes.
    bool playUntilAnnounced(const QString& title) {
        for (int i = 0; i < 1200; ++i) {
            play(0.1);
            if (set().announcedTitle() == title) return true;
        }
        return false;
    }
    [[nodiscard]] QString titleOf(int row) {
        return set().picks()->data(set().picks()->index(row), models::SetPicks::TitleRole).toString();
    }
};

} // namespace

TEST_CASE_FIXTURE(InTurn, "by keys: ticks, a start, two turns, a stop, and one line for each passage") {
    CHECK_FALSE(find("startSet")->isEnabled());
    tap(Qt::Key_Space); // too few are chosen
    CHECK(room().screen() == "set");
    for (const auto* pick : {"pick-2", "pick-0"}) press(pick);
    CHECK(set().picks()->picked() == 2);
    CHECK(find("startSet")->isEnabled());
    press("turnAmount", Qt::Key_Tab);
    find("turnBy-runs")->forceActiveFocus(Qt::MouseFocusReason);
    set().setAmount(1);
    tap(Qt::Key_Space);
    play(0.1);
    CHECK(room().screen() == "drill");
    REQUIRE(state() == DrillModel::State::Playing);
    CHECK(text("announced") == titleOf(2).toStdString());
    CHECK(find("turn") == nullptr);
    play(2.5);
    CHECK(find("announced") == nullptr);
    CHECK(text("turn") == "1 of 2 · next: " + titleOf(0).toStdString());
    REQUIRE(playUntilAnnounced(titleOf(0)));
    play(0.1);
    CHECK(text("announced") == titleOf(0).toStdString());
    play(4);
    CHECK(text("turn") == "2 of 2 · next: " + titleOf(2).toStdString());
    tap(Qt::Key_Escape);
    play(0.5);
    CHECK(state() == DrillModel::State::Stopped);
    CHECK(room().screen() == "set");
    CHECK(text("result-0") == "1 run: 1 clean · tempo now 60");
    CHECK(text("result-1") == "no run finished");
    CHECK(set().picks()->picked() == 2); // and the same set again
    tap(Qt::Key_Space);
    play(0.1);
    CHECK(state() == DrillModel::State::Playing);
    CHECK(warnings().join("\n").toStdString() == "");
}

TEST_CASE_FIXTURE(InTurn, "by mouse: from the passages to a set and back; a fifth passage is refused") {
    window().setMinimumSize(QSize(480, 640));
    for (const QSize size : {QSize(600, 960), QSize(1280, 800)}) {
        resize(size.width(), size.height());
        room().setScreen("passages");
        play(0.1);
        if (size.width() < 960)
            choose("more", "set");
        else
            click("inTurn");
        CHECK(room().screen() == "set");
    }
    for (const auto* pick : {"pick-0", "pick-1", "pick-2", "pick-3"}) click(pick);
    CHECK_FALSE(set().picks()->refused());
    click("pick-4");
    CHECK(set().picks()->refused());
    CHECK(set().picks()->picked() == 4);
    CHECK_FALSE(find("pick-4")->property("checked").toBool());
    click("pick-1"); // the later ones move up
    CHECK_FALSE(set().picks()->refused());
    CHECK(set().picks()->data(set().picks()->index(2), models::SetPicks::PlaceRole).toInt() == 2);
    click("pick-4");
    CHECK(set().picks()->picked() == 4);
    CHECK(find("pick-4")->property("checked").toBool());
    click("turnBy-minutes");
    CHECK(set().amountText() == "2 minutes each");
    click("startSet");
    CHECK(state() == DrillModel::State::Playing);
    click("stop");
    play(0.5);
    CHECK(room().screen() == "set");
    click("wayBack");
    CHECK(room().screen() == "passages");
    CHECK(warnings().join("\n").toStdString() == "");
}

TEST_CASE_FIXTURE(InTurn, "by touch: a miss in a run, and one just after the next passage was announced") {
    set().setAmount(1);
    for (const auto* pick : {"pick-3", "pick-4"}) touch(middleOf(pick));
    touch(middleOf("startSet"));
    REQUIRE(state() == DrillModel::State::Playing);
    const QString first = titleOf(3);
    const QString second = titleOf(4);
    REQUIRE(playUntilAnnounced(second));
    touch({300, 300}); // late, for the run before
    play(0.3);
    CHECK(room().drill()->feedback() == DrillModel::Feedback::Missed);
    CHECK(set().announcedTitle() == second);
    play(7.5); // the rest of the announcement, the count-in, and the first notes
    touch({300, 300});
    play(0.3);
    touch(middleOf("stop"));
    play(0.5);
    CHECK(text("result-0") == "1 run: 1 missed · tempo now 56");
    CHECK(text("result-1").starts_with("1 run: 1 missed in bar 1"));
    CHECK(warnings().join("\n").toStdString() == "");
}

TEST_CASE_FIXTURE(InTurn, "a question of a set waits on every screen, and answered, the set goes on") {
    set().setAmount(3);
    for (const auto* pick : {"pick-3", "pick-4"}) click(pick);
    click("startSet");
    for (int run = 0; run < 6 && state() == DrillModel::State::Playing; ++run) {
        play(7);
        touch({300, 300});
        play(1);
    }
    REQUIRE(state() == DrillModel::State::Paused);
    click("tab-log");
    CHECK(room().screen() == "log");
    click("now");
    click("goOn");
    play(0.5);
    CHECK(state() == DrillModel::State::Playing);
    CHECK_FALSE(set().turnText().isEmpty());
}

TEST_CASE_FIXTURE(InTurn, "everything of a set has room from 480 by 640 up, before and after") {
    for (const auto* pick : {"pick-0", "pick-1", "pick-2"}) click(pick);
    for (const bool after : {false, true}) {
        if (after) {
            click("startSet");
            play(0.5);
            click("stop");
            play(0.5);
            REQUIRE(room().screen() == "set");
        }
        for (const QSize size : {QSize(480, 640), QSize(600, 960), QSize(1280, 800), QSize(1920, 1080)}) {
            window().setMinimumSize(size);
            resize(size.width(), size.height());
            CAPTURE(size.width());
            for (const auto* name : {"wayBack", "turnBy-runs", "turnBy-minutes", "startSet"}) {
                const QQuickItem* const item = find(name);
                REQUIRE(item != nullptr);
                CHECK(item->height() >= 44);
                const QRectF place = item->mapRectToScene(item->boundingRect());
                CHECK(QRectF(QPointF(0, 0), QSizeF(size)).contains(place));
            }
        }
    }
}
