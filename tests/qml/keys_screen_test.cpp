// SPDX-License-Identifier: GPL-3.0-or-later
// The keys on the screen: changed with the keyboard alone, and effective on every screen that uses them.
#include "screen_shots.h"

#include <doctest/doctest.h>

#include <QTest>

#include <functional>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::models::KeyAction;
using piolo::models::RunThroughModel;
using piolo::test::ScreenFixture;

namespace {

struct KeysScreen {
    explicit KeysScreen(const char* screen) {
        fixture.room().keys()->listener().setBounceMillis(0); // a test presses faster than a finger
        fixture.room().setScreen(QString::fromLatin1(screen));
        fixture.play(0.05);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(&fixture.window(), key, with);
        fixture.play(0.02);
    }
    /// Presses the button with that name, using the keyboard.
    void press(const QString& name) { fixture.press(name, Qt::Key_Return); }
    [[nodiscard]] bool says(const QString& words) const { return outcome(words) != nullptr; }
    /// The last item on the screen with that text.
    [[nodiscard]] QQuickItem* outcome(const QString& words) const {
        QQuickItem* found = nullptr;
        for (QQuickItem* item : fixture.shown())
            if (item->property("text").toString().contains(words)) found = item;
        return found;
    }
    /// The button that removes this key.
    [[nodiscard]] QQuickItem* chip(const QString& words) const {
        for (QQuickItem* item : fixture.shown())
            if (item->property("words").toString() == words) return item;
        return nullptr;
    }
    [[nodiscard]] models::KeyBindings& keys() { return *fixture.room().keys(); }

    ScreenFixture fixture;
};

/// Shows the window at every size in both themes after `act`: `says` is visible each time.
void shoot(const char* name, const QString& says, const std::function<void(KeysScreen&)>& act) {
    for (const QSize size : {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080)})
        for (const bool dark : {false, true}) {
            KeysScreen screen("settings");
            screen.fixture.resize(size.width(), size.height());
            screen.fixture.setDark(dark);
            act(screen);
            CAPTURE(size.width());
            QTest::qWait(100); // until it is laid out
            const QRectF window(QPointF(), size);
            CHECK(QTest::qWaitFor([&] {
                const QQuickItem* const reported = screen.outcome(says);
                return reported != nullptr &&
                       window.contains(reported->mapRectToScene(reported->boundingRect()));
            }));
            test::keepShot(screen.fixture.shot(), QStringLiteral("%1-%2x%3%4")
                                                      .arg(QLatin1String(name))
                                                      .arg(size.width())
                                                      .arg(size.height())
                                                      .arg(dark ? QStringLiteral("-dark") : QString()));
            CHECK(screen.fixture.warnings().join("\n").toStdString() == "");
        }
}

} // namespace

TEST_CASE("a key is added, fought over and taken away by keyboard, and each time it is said") {
    KeysScreen screen("settings");
    screen.press("bind-try");
    screen.key(Qt::Key_F9);
    CHECK(screen.keys().shown(KeyAction::attempt) == "F9, T");
    CHECK(screen.says("F9 is now a key for “Try once at the target”."));
    screen.press("bind-hear");
    screen.key(Qt::Key_F9);
    CHECK(screen.says("F9 is already used"));
    CHECK(screen.fixture.find("takeOverKey") != nullptr);
    screen.press("takeOverKey");
    CHECK(screen.keys().shown(KeyAction::hear) == "F9, H");
    CHECK(screen.says("F9 is no longer a key for “Try once at the target”."));
    screen.press("bind-hear");
    screen.key(Qt::Key_Return); // an ordinary key while the screen waits for one
    CHECK(screen.says("Return is already used"));
    screen.key(Qt::Key_Escape);
    QQuickItem* const chip = screen.chip("F9");
    REQUIRE(chip != nullptr);
    chip->forceActiveFocus(Qt::TabFocusReason);
    screen.key(Qt::Key_Return);
    CHECK(screen.keys().shown(KeyAction::hear) == "H");
    CHECK(screen.says("F9 is no longer a key for"));
    CHECK(screen.chip("F9") == nullptr);
    CHECK(screen.fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("a set of keys by what the pedal sends lists the changes, and the default keys undo it") {
    KeysScreen screen("settings");
    screen.press("set-leftRight");
    CHECK(screen.keys().shown(KeyAction::mark) == "Space, Right");
    CHECK(screen.says("Take back the last mark: Backspace, Left"));
    screen.press("usualKeys");
    CHECK(screen.keys().shown(KeyAction::mark) == "Space, PgDown");
    CHECK(screen.says("Take back the last mark: Backspace, PgUp"));
}

TEST_CASE("a system without MIDI is one line once MIDI is requested") {
    KeysScreen screen("settings");
    CHECK_FALSE(screen.says("MIDI is not available"));
    screen.press("oneMidi");
    CHECK(screen.says("MIDI is not available"));
    CHECK(screen.keys().capturing().isEmpty());
}

TEST_CASE("the help follows the keys in force") {
    KeysScreen screen("help");
    screen.press("chapter-drill");
    CHECK(screen.says("Space, PgDown"));
    CHECK_FALSE(screen.says("everything: one press starts"));
    screen.keys().useSet("upDown");
    CHECK(screen.says("Space, Down"));
    CHECK(screen.says("Shift+Up; Shift+Down"));
    screen.keys().useSet("one");
    CHECK(screen.says("everything: one press starts"));
}

TEST_CASE("one pedal on the screen: a press starts, holding stops, holding again opens the next passage") {
    KeysScreen screen("drill");
    screen.fixture.room().openDrill(QString::fromStdString(screen.fixture.passage().text()));
    screen.keys().useSet("one");
    DrillModel& drill = *screen.fixture.room().drill();
    const QString passage = drill.passageText();
    const auto hold = [&] {
        QTest::keyPress(&screen.fixture.window(), Qt::Key_PageDown);
        screen.fixture.play(1.0);
        QTest::qWait(900); // the pedal's own timer
        QTest::keyRelease(&screen.fixture.window(), Qt::Key_PageDown);
        screen.fixture.play(0.3);
    };
    QTest::keyClick(&screen.fixture.window(), Qt::Key_PageDown);
    screen.fixture.play(0.5);
    QTest::qWait(400);
    CHECK(drill.state() == DrillModel::State::Playing);
    screen.fixture.play(1);
    hold();
    CHECK(drill.state() == DrillModel::State::Stopped);
    CHECK(drill.passageText() == passage);
    hold();
    CHECK(drill.state() == DrillModel::State::Stopped);
    CHECK(drill.passageText() != passage);
}

TEST_CASE("the next passage is the next in the list, after the last one the first, by key and by button") {
    KeysScreen screen("drill");
    auto* const passages = screen.fixture.room().passages();
    REQUIRE(passages->count() > 1);
    screen.fixture.room().openDrill(passages->idAt(0));
    screen.fixture.play(0.05);
    for (int step = 1; step <= passages->count(); ++step) {
        if (step % 2 == 0)
            screen.press("nextPassage");
        else
            screen.key(Qt::Key_N);
        CHECK(screen.fixture.room().drill()->passageText() == passages->idAt(step % passages->count()));
    }
}

TEST_CASE("after a scale comes the one that the grid suggests") {
    KeysScreen screen("scales");
    auto& scales = *screen.fixture.room().scales();
    scales.choices()->setInstrument("alto saxophone");
    scales.choose((scales.proposedRow() + 1) % 7, (scales.proposedColumn() + 1) % 12);
    screen.fixture.room().drillScale(false);
    REQUIRE(screen.fixture.room().screen() == "drill");
    screen.fixture.play(0.05);
    const QString first = screen.fixture.room().drill()->passageText();
    screen.key(Qt::Key_N);
    const QString next = screen.fixture.room().drill()->passageText();
    CHECK(next != first);
    CHECK(next.toStdString() == scales.proposedPassage().text());
}

TEST_CASE("a run-through by its keys: start, a stop, the stop taken back, the last note") {
    KeysScreen screen("passages");
    auto& book = screen.fixture.room().book();
    const Id piece = book.newId();
    PieceFact march{piece, "Tallow Bridge March", {}, {}};
    march.bars = 64;
    book.record(march);
    screen.fixture.room().openRunThrough(QString::fromStdString(piece.text()));
    screen.fixture.play(0.05);
    RunThroughModel& run = *screen.fixture.room().runThrough();
    screen.key(Qt::Key_PageDown);
    REQUIRE(run.state() == RunThroughModel::State::Playing);
    screen.key(Qt::Key_Space);
    screen.key(Qt::Key_Space);
    screen.key(Qt::Key_Backspace);
    CHECK(run.counted() == "1 stop");
    screen.key(Qt::Key_Return);
    CHECK(run.state() == RunThroughModel::State::Review);
    screen.key(Qt::Key_PageDown); // turns the page of the review again
    CHECK(run.state() == RunThroughModel::State::Review);
    CHECK(screen.fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("the form's key saves and drills while a name is typed, even if it is another key") {
    for (const bool another : {false, true}) {
        KeysScreen screen("passages");
        if (another) {
            screen.keys().capture("save");
            screen.key(Qt::Key_D, Qt::ControlModifier);
        }
        screen.press("newPassage");
        QQuickItem* const name = screen.fixture.find("field-title");
        REQUIRE(name != nullptr);
        screen.key(Qt::Key_B);
        if (another)
            screen.key(Qt::Key_D, Qt::ControlModifier);
        else
            screen.key(Qt::Key_Return, Qt::ControlModifier);
        CHECK(screen.fixture.room().screen() == "drill");
        CHECK(screen.fixture.room().drill()->text()->title() == "b");
    }
}

TEST_CASE("the result of changing keys is visible in every theme at every size") {
    shoot("settings-switches", "MIDI is not available", [](KeysScreen& screen) { screen.press("oneMidi"); });
    shoot("settings-set", "Slower, while stopped: Shift+Down",
          [](KeysScreen& screen) { screen.press("set-upDown"); });
    shoot("settings-keys", "T is already used", [](KeysScreen& screen) {
        screen.press("bind-hear");
        screen.key(Qt::Key_T);
    });
    shoot("settings-usual", "Take back the last mark", [](KeysScreen& screen) {
        screen.keys().useSet("upDown");
        screen.press("usualKeys");
    });
}
