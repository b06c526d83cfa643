// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/one_pedal.h"

#include <algorithm>
#include <utility>

namespace piolo::models {

namespace {

constexpr std::int64_t nanosInMilli = 1'000'000;
constexpr std::int64_t lateNanos = 50 * nanosInMilli;
constexpr int againMillis = 10;

} // namespace

OnePedal::OnePedal(std::function<std::int64_t()> clock, std::function<bool()> atOnce, QObject* parent)
    : QObject(parent), clock_(std::move(clock)), atOnce_(std::move(atOnce)) {
    timer_.setSingleShot(true);
    timer_.setTimerType(Qt::PreciseTimer);
    connect(&timer_, &QTimer::timeout, this, &OnePedal::look);
}

void OnePedal::down(qint64 nanos) { send(press_.down(nanos, atOnce_())); }

void OnePedal::up(qint64 nanos) { send(press_.up(nanos)); }

void OnePedal::stillDown() {
    press_.stillDown();
    send({});
}

void OnePedal::forget() {
    press_.forget();
    timer_.stop();
}

// If the window was blocked, the release may still be queued: lets it in first, once.
void OnePedal::look() {
    const std::int64_t now = clock_();
    const auto due = press_.due();
    if (due && now - *due > lateNanos && !std::exchange(lookedLate_, true)) return timer_.start(againMillis);
    lookedLate_ = false;
    send(press_.pass(now));
}

void OnePedal::send(const practice::PedalPress::Acts& acts) {
    for (const practice::PedalAct& act : acts) emit acted(act);
    const auto due = press_.due();
    if (!due) return timer_.stop();
    const std::int64_t millis = (*due - clock_() + nanosInMilli - 1) / nanosInMilli;
    timer_.start(static_cast<int>(std::clamp<std::int64_t>(millis, 0, 60'000)));
}

} // namespace piolo::models
