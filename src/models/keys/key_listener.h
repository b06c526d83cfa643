// SPDX-License-Identifier: GPL-3.0-or-later
// How keys and switches reach what they do.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
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

/// Window's thread.
class KeyListener : public QObject {
    Q_OBJECT
public:
    /// `table` outlives this. `clock` gives the present moment in nanoseconds of the monotonic clock.
    KeyListener(const KeyTable& table, std::function<std::int64_t()> clock, QObject* parent = nullptr);

    /// Where the player is: the keys of that scope are heard, all others are left to the controls.
    void setScope(KeyScope scope) { scope_ = scope; }
    /// The click runs: keys come before those of any focused control.
    void setUrgent(bool urgent) { urgent_ = urgent; }
    void setBounceMillis(int millis) { watch_.setBounce(millis); }
    /// Every key is offered, and does nothing.
    void setCapturing(bool capturing) { capturing_ = capturing; }
    /// The player is at a button: Space and Return are the button's.
    void setDeciding(bool deciding) { deciding_ = deciding; }

    /// Listens to the keys of that window.
    void watch(QQuickWindow* window);
    /// Listens to those switches, too. `switches` outlives this.
    void watch(MidiSwitches& switches);
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    /// A key of that action was pressed, at that moment (nanoseconds of the monotonic clock).
    void pressed(piolo::models::KeyAction action, qint64 nanos);
    /// A key was pressed while capturing.
    void offered(const QString& trigger);
    /// The one pedal, which is read by when it moves.
    void pedalDown(qint64 nanos);
    void pedalUp(qint64 nanos);
    /// The pedal's last release was none.
    void pedalStillDown();
    /// The keyboard went away.
    void pedalLost();

private:
    /// A key or switch on its way: its contact is its own, whatever the modifiers.
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
    std::optional<int> pedal_; // the contact that moved the one pedal last
};

} // namespace piolo::models
