// SPDX-License-Identifier: GPL-3.0-or-later
// The one pedal in real time: it is asked again when something is due.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QTimer>

#include "practice/keys/pedal_press.h"

#include <cstdint>
#include <functional>

namespace piolo::models {

/// Window's thread.
class OnePedal : public QObject {
    Q_OBJECT
public:
    /// `clock` gives the present moment, `atOnce` whether a press marks now.
    OnePedal(std::function<std::int64_t()> clock, std::function<bool()> atOnce, QObject* parent = nullptr);

    void setTiming(const practice::PedalPress::Timing& timing) { press_.setTiming(timing); }
    void down(qint64 nanos);
    void up(qint64 nanos);
    void stillDown();
    void forget();
    /// What is due by now. The timer calls it.
    void look();

signals:
    void acted(const piolo::practice::PedalAct& act);

private:
    void tell(const practice::PedalPress::Acts& acts);

    std::function<std::int64_t()> clock_;
    std::function<bool()> atOnce_;
    practice::PedalPress press_;
    QTimer timer_;
    bool lookedLate_ = false;
};

} // namespace piolo::models
