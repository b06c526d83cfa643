// SPDX-License-Identifier: GPL-3.0-or-later
// The log by mouse, touch and keys: marks changed, days pointed at, the worst passages chosen, in any size.
#include "../screen_shots.h"

#include <doctest/doctest.h>

#include <QAccessible>
#include <QSet>
#include <QTest>

#include <algorithm>

using namespace piolo;
using piolo::test::keepShot;
using piolo::test::ScreenFixture;

namespace {

struct InTheLog : ScreenFixture {
    InTheLog() {
        room().setScreen("log");
        play(0.1);
    }
    ~InTheLog() { CHECK(warnings().join("\n").toStdString() == ""); }

    void key(Qt::Key key) {
        QTest::keyClick(&window(), key);
        play(0.05);
    }
    void openFirstLine() {
        log().setKind("run");
        play(0.1);
        QQuickItem* const line = find("logLine");
        REQUIRE(line != nullptr);
        line->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_Return);
    }
    [[nodiscard]] models::LogModel& log() { return *room().log(); }
    [[nodiscard]] std::size_t missed() {
        const auto& entries = room().book().notebook().passage(passage())->entries;
        return static_cast<std::size_t>(std::count_if(
            entries.begin(), entries.end(), [](const Entry& entry) { return entry.mark == Mark::missed; }));
    }
    [[nodiscard]] QString caption() const { return find("minutesCaption")->property("text").toString(); }
    [[nodiscard]] std::vector<QQuickItem*> named(const char* name) const {
        std::vector<QQuickItem*> items;
        for (QQuickItem* item : shown())
            if (item->objectName() == QLatin1String(name)) items.push_back(item);
        return items;
    }
};

} // namespace

TEST_CASE_FIXTURE(InTheLog,
                  "a clean run is made a miss by a click and clean again by keys, and its line stays open") {
    const std::size_t before = missed();
    openFirstLine();
    REQUIRE(find("setMissed") != nullptr);
    click("setMissed");
    play(0.1);
    CHECK(missed() == before + 1);
    REQUIRE(find("setClean") != nullptr);
    keepShot(shot(), "log-mark-changed");
    press("setClean");
    play(0.1);
    CHECK(missed() == before);
    CHECK(find("setMissed") != nullptr);
}

TEST_CASE_FIXTURE(InTheLog, "a mark is changed by touch in a narrow window") {
    resize(480, 640);
    play(0.1);
    const std::size_t before = missed();
    openFirstLine();
    REQUIRE(find("setMissed") != nullptr);
    find("setMissed")->forceActiveFocus(Qt::TabFocusReason); // scrolls it into view
    play(0.1);
    touch(middleOf("setMissed"));
    play(0.1);
    CHECK(missed() == before + 1);
}

TEST_CASE_FIXTURE(InTheLog, "the buttons of each run name it") {
    openFirstLine();
    for (const char* name : {"takeEntryBack", "writeNote", "setMissed"}) {
        QSet<QString> names;
        const auto buttons = named(name);
        for (QQuickItem* button : buttons)
            names.insert(QAccessible::queryAccessibleInterface(button)->text(QAccessible::Name));
        CAPTURE(name);
        CHECK(buttons.size() > 1);
        CHECK(static_cast<std::size_t>(names.size()) == buttons.size());
    }
}

TEST_CASE_FIXTURE(InTheLog, "a day's figures are shown for the pointer, a touch and the arrow keys") {
    const QString usual = caption();
    QQuickItem* const bars = find("minutesBars");
    REQUIRE(bars != nullptr);
    const auto place = [&](double share) {
        return bars->mapToScene(QPointF(bars->width() * share, bars->height() / 2)).toPoint();
    };
    QTest::mouseMove(&window(), place(0.99));
    play(0.05);
    const QString today = caption();
    CHECK(today != usual);
    QTest::mouseMove(&window(), place(0.5));
    play(0.05);
    CHECK(caption() != today);
    QTest::mouseMove(&window(), QPoint(2, 2));
    play(0.05);
    CHECK(caption() == usual);
    touch(place(0.99));
    play(0.05);
    CHECK(caption() == today);
    bars->forceActiveFocus(Qt::TabFocusReason);
    CHECK(caption() == usual);
    key(Qt::Key_Right);
    CHECK(caption() == today);
    key(Qt::Key_Left);
    CHECK(caption() != today);
    keepShot(shot(), "log-day-pointed");
}

TEST_CASE_FIXTURE(InTheLog, "choosing a worst passage shows only it, choosing it again shows all") {
    for (int run = 0; run < 6; ++run)
        room().book().record(
            RunFact{passage(), Tempo::bpm(80), Mark::missed, Reason::none, RunKind::run, 8'000, {{42, 3}}});
    play(0.1);
    REQUIRE(find("worst-0") != nullptr);
    click("worst-0");
    play(0.1);
    CHECK(log().passage().toStdString() == passage().text());
    keepShot(shot(), "log-worst");
    press("worst-0");
    CHECK(log().passage().isEmpty());
    touch(middleOf("worst-0"));
    CHECK(log().passage().toStdString() == passage().text());
}

TEST_CASE_FIXTURE(InTheLog,
                  "in any size, nothing of the log lies outside it, and every line can be reached by keys") {
    for (const QSize size :
         {QSize(480, 640), QSize(600, 960), QSize(1024, 640), QSize(1280, 800), QSize(1920, 1080)}) {
        resize(size.width(), size.height());
        play(0.1);
        CAPTURE(size.width());
        for (QQuickItem* item : shown()) {
            if (item->width() <= 0 || item->height() <= 0) continue;
            const QRectF box = item->mapRectToScene({0, 0, item->width(), item->height()});
            INFO(item->metaObject()->className(), " ", item->objectName().toStdString());
            CHECK(box.left() >= -0.5);
            CHECK(box.right() <= size.width() + 0.5);
        }
        QQuickItem* const list = find("logList");
        REQUIRE(list != nullptr);
        list->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_End);
        play(0.1);
        CHECK(!named("logLine").empty());
        key(Qt::Key_Home);
        play(0.1);
        CHECK(find("logCurves") != nullptr);
    }
}
