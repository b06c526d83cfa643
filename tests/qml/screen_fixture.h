// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window on fake ports: a practice folder with some weeks in it, sound in virtual time.
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

/// The wall clock of the stage: a fixed day's morning, moved by the test.
class StageClock final : public journal::Clock {
public:
    Timestamp now() override { return {millis, 60}; }
    std::int64_t millis = 1'777'622'400'000; // 2026-05-01T08:00:00Z
};

class ScreenFixture {
public:
    /// An empty folder is the first start.
    explicit ScreenFixture(bool emptyFolder = false);
    ~ScreenFixture();
    ScreenFixture(const ScreenFixture&) = delete;
    ScreenFixture& operator=(const ScreenFixture&) = delete;

    /// Closes the window, if one is open, and opens another that shows what is open in the room.
    void openWindow();
    /// Shows the screen of that name with something in it: the passage in the drill, the piece to be played
    /// through, the scales of an instrument.
    void open(std::string_view screen);
    void play(double seconds);
    /// The key goes the way of a real one, with a timestamp of its own.
    void tap(int key);
    /// Clicks in the middle of the item of that name, which is there.
    void click(const QString& name);
    /// Gives that item the focus and presses the key.
    void press(const QString& name, Qt::Key key = Qt::Key_Space);
    void resize(int width, int height);
    void setDark(bool dark);
    [[nodiscard]] QImage shot();
    /// The first item of that objectName below the window; none when there is no such.
    [[nodiscard]] QQuickItem* find(const QString& name) const;
    /// All items below the window that are shown.
    [[nodiscard]] QList<QQuickItem*> shown() const;
    /// What QML complained of since the stage was set.
    [[nodiscard]] QStringList warnings() const { return warnings_; }
    [[nodiscard]] QQuickWindow& window() const { return *window_; }
    [[nodiscard]] models::PracticeRoom& room() { return *room_; }
    [[nodiscard]] VirtualSound& sound() { return sound_; }
    [[nodiscard]] Id passage() const { return passage_; }

private:
    [[nodiscard]] QQuickItem& there(const QString& name) const;
    void fill(practice::PracticeBook& book);
    void practise(practice::PracticeBook& book, Id passage, int day);

    QTemporaryDir scratch_;
    std::shared_ptr<engine::DrillEngine> engine_ = std::make_shared<engine::DrillEngine>();
    VirtualSound sound_{engine_};
    std::shared_ptr<StageClock> clock_ = std::make_shared<StageClock>();
    Id passage_;
    std::unique_ptr<models::PracticeRoom> room_;
    QStringList warnings_;
    std::unique_ptr<QQmlApplicationEngine> screens_;
    QQuickWindow* window_ = nullptr;
    quint64 moment_ = 1'000'000;
};

} // namespace piolo::test
