// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_bindings.h"

#include <doctest/doctest.h>

#include <QAbstractItemModelTester>
#include <QCoreApplication>

using piolo::models::KeyAction;
using piolo::models::KeyBindings;
using piolo::models::KeyListener;
using piolo::models::KeyScope;

namespace {

struct Keyboard {
    explicit Keyboard(const KeyBindings::Keys& saved = {})
        : bindings(
              saved, [this](const KeyBindings::Keys& keys) { stored = keys; }, [this] { return now; }) {
        QObject::connect(&bindings.listener(), &KeyListener::pressed, [this](KeyAction action, qint64 nanos) {
            actions.append(QString::fromStdString(std::string(infoOf(action).name)));
            moments.append(nanos);
        });
        bindings.listener().watch(&window);
        bindings.listener().setScope(KeyScope::drill);
    }
    void tap(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        moment += 1000;
        send(QEvent::KeyPress, key, modifiers);
        moment += 90;
        send(QEvent::KeyRelease, key, modifiers);
    }
    void send(QEvent::Type type, int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier,
              bool repeats = false) {
        QKeyEvent event(type, key, modifiers, QString(), repeats);
        event.setTimestamp(moment);
        QCoreApplication::sendEvent(&window, &event);
    }

    QQuickWindow window;
    std::int64_t now = 90'000'000'000'000;
    quint64 moment = 1'000'000;
    KeyBindings::Keys stored;
    KeyBindings bindings;
    QStringList actions;
    QList<qint64> moments;
};

} // namespace

TEST_CASE("the default keys do what they say, and so do pedals") {
    Keyboard keyboard;
    const QAbstractItemModelTester tester(&keyboard.bindings,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    for (const int key : {Qt::Key_Space, Qt::Key_PageDown, Qt::Key_Return, Qt::Key_Backspace, Qt::Key_PageUp,
                          Qt::Key_Up, Qt::Key_Down, Qt::Key_Escape})
        keyboard.tap(key);
    CHECK(keyboard.actions ==
          QStringList{"mark", "mark", "clean", "back", "back", "faster", "slower", "stop"});
}

TEST_CASE("a screen that does not listen keeps its keys") {
    Keyboard keyboard;
    keyboard.bindings.listener().setScope(KeyScope::none);
    keyboard.tap(Qt::Key_Space);
    CHECK(keyboard.actions.isEmpty());
}

TEST_CASE("a press has its own timestamp if that is from the monotonic clock, otherwise the current time") {
    Keyboard keyboard;
    keyboard.now = 5'000'040'000'000; // 40 ms after the press
    keyboard.moment = 5'000'000 - 1000;
    keyboard.tap(Qt::Key_Space);
    CHECK(keyboard.moments.back() == 5'000'000'000'000);
    keyboard.now = 90'000'000'000'000;
    keyboard.tap(Qt::Key_Space);
    CHECK(keyboard.moments.back() == 90'000'000'000'000);
}

TEST_CASE("a key is bound by pressing it, and kept") {
    Keyboard keyboard;
    keyboard.bindings.capture("mark");
    keyboard.tap(Qt::Key_F5);
    CHECK(keyboard.bindings.capturing().isEmpty());
    CHECK(keyboard.bindings.shown(KeyAction::mark) == "F5, Space, PgDown");
    CHECK(keyboard.stored.at("mark") == "F5, Space, PgDown");
    keyboard.tap(Qt::Key_F5);
    CHECK(keyboard.actions == QStringList{"mark"});

    Keyboard next(keyboard.stored);
    next.tap(Qt::Key_F5);
    CHECK(next.actions == QStringList{"mark"});
}

TEST_CASE("a key that is taken is not bound twice; the action that has it is named") {
    Keyboard keyboard;
    keyboard.bindings.capture("back");
    keyboard.tap(Qt::Key_T);
    CHECK(keyboard.bindings.capturing() == "back");
    CHECK(keyboard.bindings.conflict().contains("T is already used for “Try once at the target”"));
    CHECK(keyboard.bindings.isContested());
    CHECK(keyboard.stored.empty());
    SUBCASE("and Esc leaves it") {
        keyboard.tap(Qt::Key_Escape);
        CHECK(keyboard.bindings.shown(KeyAction::attempt) == "T");
        CHECK(keyboard.stored.empty());
    }
    SUBCASE("pressed again, it is taken over, and the replaced key is reported") {
        keyboard.tap(Qt::Key_T);
        CHECK(keyboard.bindings.shown(KeyAction::back) == "T, Backspace, PgUp");
        CHECK(keyboard.bindings.shown(KeyAction::attempt) == "");
        CHECK(keyboard.bindings.saying().contains("T is no longer a key for “Try once at the target”."));
        CHECK(keyboard.stored == KeyBindings::Keys{{"back", "T, Backspace, PgUp"}, {"try", ""}});
    }
    SUBCASE("a button takes it over, too") {
        keyboard.bindings.takeOver();
        CHECK(keyboard.bindings.shown(KeyAction::back) == "T, Backspace, PgUp");
    }
    SUBCASE("another key is bound instead") {
        keyboard.tap(Qt::Key_F7);
        CHECK(keyboard.bindings.shown(KeyAction::back) == "F7, Backspace, PgUp");
        CHECK(keyboard.bindings.shown(KeyAction::attempt) == "T");
    }
    CHECK(keyboard.bindings.capturing().isEmpty());
    CHECK(keyboard.bindings.conflict().isEmpty());
    CHECK(keyboard.actions.isEmpty());
}

TEST_CASE("in another language, earlier messages and pending captures are gone") {
    Keyboard keyboard;
    keyboard.bindings.useSet("one");
    CHECK(keyboard.bindings.saying() != "");
    keyboard.bindings.capture("back");
    keyboard.tap(Qt::Key_T);
    CHECK(keyboard.bindings.conflict() != "");
    keyboard.bindings.reword();
    CHECK(keyboard.bindings.conflict() == "");
    CHECK(keyboard.bindings.capturing() == "");
    keyboard.bindings.useSet("pages");
    CHECK(keyboard.bindings.saying() != "");
    keyboard.bindings.reword();
    CHECK(keyboard.bindings.saying() == "");
}

TEST_CASE("in another place a key can do another thing") {
    Keyboard keyboard;
    keyboard.bindings.capture("stretch"); // in the log
    keyboard.tap(Qt::Key_T);
    CHECK(keyboard.bindings.shown(KeyAction::stretch) == "T, N");
    CHECK(keyboard.bindings.shown(KeyAction::attempt) == "T");
    keyboard.tap(Qt::Key_T);
    keyboard.bindings.listener().setScope(KeyScope::log);
    keyboard.tap(Qt::Key_T);
    CHECK(keyboard.actions == QStringList{"try", "stretch"});
}

TEST_CASE("a key is taken away, but not the last one that marks or stops") {
    Keyboard keyboard;
    keyboard.bindings.takeAway("mark", "PgDown");
    CHECK(keyboard.bindings.shown(KeyAction::mark) == "Space");
    CHECK(keyboard.stored == KeyBindings::Keys{{"mark", "Space"}});
    keyboard.tap(Qt::Key_PageDown);
    CHECK(keyboard.actions.isEmpty());
    keyboard.bindings.takeAway("mark", "Space");
    CHECK(keyboard.bindings.saying().contains("Space stays"));
    keyboard.bindings.takeAway("stop", "Esc");
    CHECK(keyboard.bindings.shown(KeyAction::stop) == "Esc");
    keyboard.bindings.capture("clean");
    keyboard.tap(Qt::Key_Space); // the last key that marks cannot be taken over, either
    CHECK_FALSE(keyboard.bindings.isContested());
    keyboard.tap(Qt::Key_Space);
    CHECK(keyboard.bindings.shown(KeyAction::mark) == "Space");
    keyboard.bindings.giveUp();

    keyboard.bindings.capture("pedal"); // it marks and stops
    keyboard.tap(Qt::Key_F5);
    keyboard.bindings.takeAway("mark", "Space");
    keyboard.bindings.takeAway("stop", "Esc");
    CHECK(keyboard.bindings.shown(KeyAction::mark) == "F5");
    keyboard.bindings.takeAway("pedal", "F5");
    CHECK(keyboard.bindings.shown(KeyAction::pedal) == "F5");
    CHECK(keyboard.bindings.shown(KeyAction::stop) == "F5 held");
    CHECK(keyboard.bindings.shown(KeyAction::back) == "Backspace, PgUp, F5 twice");
    CHECK(keyboard.bindings.shown(KeyAction::next) == "N, F5 held");
}

TEST_CASE("the fifth key of an action replaces the oldest, which is reported") {
    Keyboard keyboard;
    for (const int key : {Qt::Key_F5, Qt::Key_F6, Qt::Key_F7}) {
        keyboard.bindings.capture("mark");
        keyboard.tap(key);
    }
    CHECK(keyboard.bindings.shown(KeyAction::mark) == "F7, F6, F5, Space");
    CHECK(keyboard.bindings.saying().contains("PgDown was removed: an action has at most"));
}

TEST_CASE("Tab and modifiers alone are left to the window, even while a key is being captured") {
    Keyboard keyboard;
    keyboard.bindings.capture("mark");
    for (const int key : {Qt::Key_Tab, Qt::Key_Backtab, Qt::Key_Shift, Qt::Key_Control}) keyboard.tap(key);
    CHECK(keyboard.bindings.capturing() == "mark");
    CHECK(keyboard.bindings.shown(KeyAction::mark) == "Space, PgDown");
    keyboard.tap(Qt::Key_P, Qt::ControlModifier);
    CHECK(keyboard.bindings.shown(KeyAction::mark) == "Ctrl+P, Space, PgDown");
}

TEST_CASE("a held key marks once, reported as repeats or as presses, and so does one that bounces") {
    Keyboard keyboard;
    keyboard.send(QEvent::KeyPress, Qt::Key_Space);
    SUBCASE("repeats") {
        for (int i = 0; i < 5; ++i) {
            keyboard.moment += 30;
            keyboard.send(QEvent::KeyRelease, Qt::Key_Space, Qt::NoModifier, true);
            keyboard.send(QEvent::KeyPress, Qt::Key_Space, Qt::NoModifier, true);
        }
    }
    SUBCASE("releases and presses") {
        for (int i = 0; i < 5; ++i) {
            keyboard.moment += 200;
            keyboard.send(QEvent::KeyRelease, Qt::Key_Space);
            keyboard.moment += i * 7; // up to 28 ms
            keyboard.send(QEvent::KeyPress, Qt::Key_Space);
        }
    }
    CHECK(keyboard.actions == QStringList{"mark"});
}

TEST_CASE("how soon is a bounce is the player's own") {
    Keyboard keyboard;
    keyboard.bindings.listener().setBounceMillis(100);
    for (int i = 0; i < 2; ++i) {
        keyboard.send(QEvent::KeyPress, Qt::Key_Space);
        keyboard.moment += 60;
        keyboard.send(QEvent::KeyRelease, Qt::Key_Space);
        keyboard.moment += 90;
    }
    CHECK(keyboard.actions == QStringList{"mark"});
}

TEST_CASE("the default keys are fully restored") {
    Keyboard keyboard;
    keyboard.bindings.capture("try");
    keyboard.tap(Qt::Key_F9);
    keyboard.bindings.restore();
    CHECK(keyboard.bindings.shown(KeyAction::attempt) == "T");
    CHECK(keyboard.bindings.shown(KeyAction::hear) == "H");
    CHECK(keyboard.stored.empty());
}
