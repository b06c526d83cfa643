// SPDX-License-Identifier: GPL-3.0-or-later
// How keys and switches reach their actions.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QKeyEvent>
#include <QObject>
#include <QQuickWindow>
#include <QString>

#include "models/keys/key_table.h"
#include "models/keys/midi_switches.h"
#include "practice/keys/key_press_watch.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace piolo::models {

/// Window thread.
class KeyListener : public QObject {
    Q_OBJECT
public:
    /// `table` must outlive this object. `clock` returns the current time in nanoseconds of the monotonic
    /// clock.
    KeyListener(const KeyTable& table, std::function<std::int64_t()> clock, QObject* parent = nullptr);

    /// Where the player is: the keys of that scope are handled, all others are left to the controls.
    void setScope(KeyScope scope) { scope_ = scope; }
    /// While the click runs, keys take precedence over any focused control.
    void setUrgent(bool urgent) { urgent_ = urgent; }
    void setBounceMillis(int millis) { watch_.setBounce(millis); }
    /// While capturing, every key is offered and has no other effect.
    void setCapturing(bool capturing) { capturing_ = capturing; }
    /// While the player is at a button, Space and Return go to the button.
    void setDeciding(bool deciding) { deciding_ = deciding; }

    /// Handles the keys of that window.
    void watch(QQuickWindow* window);
    /// Handles those switches, too. `switches` must outlive this object.
    void watch(MidiSwitches& switches);
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    /// A key of that action was pressed at that time (nanoseconds of the monotonic clock).
    void pressed(piolo::models::KeyAction action, qint64 nanos);
    /// A key was pressed while capturing.
    void offered(const QString& trigger);
    /// The single pedal, whose timing matters.
    void pedalDown(qint64 nanos);
    void pedalUp(qint64 nanos);
    /// The pedal's last release was not real.
    void pedalStillDown();
    /// The keyboard focus was lost.
    void pedalLost();

private:
    /// A key or switch being handled. Its contact is the same whatever the modifiers.
    struct Hit {
        QString trigger;
        int contact = 0;
        std::int64_t nanos = 0;
    };
    bool press(const QKeyEvent& event);
    void release(const QKeyEvent& event);
    void move(const practice::MidiMoment& moment);
    void take(const Hit& hit);
    void act(KeyAction action, const Hit& hit);
    void lift(int contact, std::int64_t nanos);
    [[nodiscard]] std::optional<KeyAction> actionOf(const QString& trigger) const;
    [[nodiscard]] bool leftToControl(const QKeyEvent& event) const;
    [[nodiscard]] std::int64_t momentOf(const QKeyEvent& event) const;

    const KeyTable& table_;
    std::function<std::int64_t()> clock_;
    practice::KeyPressWatch watch_;
    QQuickWindow* window_ = nullptr;
    KeyScope scope_ = KeyScope::none;
    bool urgent_ = false;
    bool capturing_ = false;
    bool deciding_ = false;
    std::optional<int> pedal_; // the contact that last moved the single pedal
};

} // namespace piolo::models
