// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/key_bindings.h"

#include <doctest/doctest.h>

#include <QAbstractItemModelTester>
#include <QCoreApplication>

using piolo::models::KeyBindings;

namespace {

struct Keyboard {
    explicit Keyboard(const KeyBindings::Keys& saved = {})
        : bindings(
              saved, [this](const KeyBindings::Keys& keys) { stored = keys; }, [this] { return now; }) {
        QObject::connect(&bindings, &KeyBindings::pressed, [this](const QString& action, qint64 nanos) {
            actions.append(action);
            moments.append(nanos);
        });
        bindings.watch(&window);
        bindings.setListening(true);
    }
    void tap(int key) {
        moment += 1000;
        send(QEvent::KeyPress, key);
        moment += 90;
        send(QEvent::KeyRelease, key);
    }
    void send(QEvent::Type type, int key) {
        QKeyEvent event(type, key, Qt::NoModifier);
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

TEST_CASE("the usual keys do what they say, pedals too") {
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
    keyboard.bindings.setListening(false);
    keyboard.tap(Qt::Key_Space);
    CHECK(keyboard.actions.isEmpty());
}

TEST_CASE("a press is dated by its own timestamp when that is the monotonic clock's, else it is now") {
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
    CHECK(keyboard.bindings.markKeys() == "F5, Space, PgDown");
    CHECK(keyboard.stored.at("mark") == "F5, Space, PgDown");
    keyboard.tap(Qt::Key_F5);
    CHECK(keyboard.actions == QStringList{"mark"});

    Keyboard next(keyboard.stored);
    next.tap(Qt::Key_F5);
    CHECK(next.actions == QStringList{"mark"});
}

TEST_CASE("a key that is taken is not bound twice; the conflict is told") {
    Keyboard keyboard;
    keyboard.bindings.capture("back");
    keyboard.tap(Qt::Key_Space);
    CHECK(keyboard.bindings.capturing() == "back");
    CHECK(keyboard.bindings.conflict().contains("Space"));
    CHECK(keyboard.stored.empty());
    keyboard.tap(Qt::Key_Escape);
    CHECK(keyboard.bindings.capturing().isEmpty());
    CHECK(keyboard.actions.isEmpty());
}

TEST_CASE("the usual keys come back whole") {
    Keyboard keyboard;
    keyboard.bindings.capture("try");
    keyboard.tap(Qt::Key_F9);
    keyboard.bindings.restore();
    CHECK(keyboard.bindings.tryKeys() == "T");
    CHECK(keyboard.bindings.hearKeys() == "H");
    CHECK(keyboard.stored.empty());
}
