// SPDX-License-Identifier: GPL-3.0-or-later
// The single pedal in real time: a timer asks it again when something is due.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QTimer>

#include "practice/keys/pedal_press.h"

#include <cstdint>
#include <functional>

namespace piolo::models {

/// Window thread.
class OnePedal : public QObject {
    Q_OBJECT
public:
    /// `clock` returns the current time, `atOnce` whether a press marks now.
    OnePedal(std::function<std::int64_t()> clock, std::function<bool()> atOnce, QObject* parent = nullptr);

    void setTiming(const practice::PedalPress::Timing& timing) { press_.setTiming(timing); }
    void down(qint64 nanos);
    void up(qint64 nanos);
    void stillDown();
    void forget();
    /// Handles what is due by now. Called by the timer.
    void look();

signals:
    void acted(const piolo::practice::PedalAct& act);

private:
    void send(const practice::PedalPress::Acts& acts);

    std::function<std::int64_t()> clock_;
    std::function<bool()> atOnce_;
    practice::PedalPress press_;
    QTimer timer_;
    bool lookedLate_ = false;
};

} // namespace piolo::models
