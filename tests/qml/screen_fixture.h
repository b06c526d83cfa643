// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window with fake ports: a practice folder with some weeks in it, sound in virtual time.
#pragma once

#include "../practice/virtual_sound.h"
#include "models/room/practice_room.h"

#include <QImage>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>
#include <QTemporaryDir>

#include <memory>
#include <string_view>

namespace piolo::test {

/// The wall clock of the fixture: the morning of a fixed day, moved by the test.
class FixtureClock final : public journal::Clock {
public:
    Timestamp now() override { return {millis, 60}; }
    std::int64_t millis = 1'777'622'400'000; // 2026-05-01T08:00:00Z
};

class ScreenFixture {
public:
    /// With an empty folder, it is the first start.
    explicit ScreenFixture(bool emptyFolder = false);
    ~ScreenFixture();
    ScreenFixture(const ScreenFixture&) = delete;
    ScreenFixture& operator=(const ScreenFixture&) = delete;

    /// Closes the window if one is open, and opens another that shows the room's current state.
    void openWindow();
    /// Shows the screen with that name with content: the passage in the drill, the piece of a run-through,
    /// the scales of an instrument.
    void open(std::string_view screen);
    void play(double seconds);
    /// The key takes the way of a real one, with a timestamp of its own.
    void tap(int key);
    /// Clicks in the middle of the item with that name, which must exist.
    void click(const QString& name);
    /// Touches that place of the window with one finger and lifts it after `seconds`.
    void touch(QPoint place, double seconds = 0.05);
    /// Drags with one finger, slowly enough that nothing flies on.
    void drag(QPoint from, QPoint to);
    /// Where the middle of that item is, which must exist.
    [[nodiscard]] QPoint middleOf(const QString& name) const;
    /// Focuses that item and presses the key.
    void press(const QString& name, Qt::Key key = Qt::Key_Space);
    /// Chooses the option with that value from the drop-down list with that name.
    void choose(const QString& name, const QVariant& value);
    void resize(int width, int height);
    void setDark(bool dark);
    [[nodiscard]] QImage shot();
    /// The first item with that objectName below the window; null if there is none.
    [[nodiscard]] QQuickItem* find(const QString& name) const;
    /// All visible items below the window.
    [[nodiscard]] QList<QQuickItem*> shown() const;
    /// QML's warnings since the fixture was created.
    [[nodiscard]] QStringList warnings() const { return warnings_; }
    [[nodiscard]] QQuickWindow& window() const { return *window_; }
    [[nodiscard]] models::PracticeRoom& room() { return *room_; }
    [[nodiscard]] VirtualSound& sound() { return sound_; }
    [[nodiscard]] FixtureClock& clock() { return *clock_; }
    [[nodiscard]] Id passage() const { return passage_; }
    /// The path of the practice folder.
    [[nodiscard]] QString folder() const { return scratch_.filePath(QStringLiteral("folder")); }

private:
    [[nodiscard]] QQuickItem& there(const QString& name) const;
    void fill(practice::PracticeBook& book);
    void practise(practice::PracticeBook& book, Id passage, int day);

    QTemporaryDir scratch_;
    std::shared_ptr<engine::DrillEngine> engine_ = std::make_shared<engine::DrillEngine>();
    VirtualSound sound_{engine_};
    std::shared_ptr<FixtureClock> clock_ = std::make_shared<FixtureClock>();
    Id passage_;
    std::unique_ptr<models::PracticeRoom> room_;
    QStringList warnings_;
    std::unique_ptr<QQmlApplicationEngine> screens_;
    QQuickWindow* window_ = nullptr;
    quint64 moment_ = 1'000'000;
};

} // namespace piolo::test
