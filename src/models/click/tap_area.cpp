// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/click/tap_area.h"

#include "models/keys/event_moment.h"
#include "models/text/formatter.h"

#include <QKeyEvent>

#include <chrono>

namespace piolo::models {

namespace {

std::int64_t nowNanos() { return std::chrono::steady_clock::now().time_since_epoch().count(); }

} // namespace

TapArea::TapArea(QQuickItem* parent) : MarkArea(parent) {
    connect(this, &MarkArea::marked, this, &TapArea::count);
}

void TapArea::componentComplete() {
    MarkArea::componentComplete();
    if (parentItem() != nullptr) parentItem()->installEventFilter(this);
}

// The button goes on to show that it is pressed.
bool TapArea::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto& press = *static_cast<QKeyEvent*>(event);
        const bool presses =
            press.key() == Qt::Key_Space || press.key() == Qt::Key_Return || press.key() == Qt::Key_Enter;
        if (presses && !press.isAutoRepeat()) emit marked(press.timestamp());
    }
    return MarkArea::eventFilter(watched, event);
}

// Events have milliseconds.
void TapArea::press() { emit marked(static_cast<quint64>(nowNanos() / 1'000'000)); }

void TapArea::count(quint64 stamp) {
    taps_.tap(eventMoment(stamp, nowNanos()));
    if (const auto tempo = taps_.tempo()) emit tapped(Formatter::tempo(*tempo));
}

} // namespace piolo::models
