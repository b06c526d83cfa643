// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/mark_area.h"

#include <QMouseEvent>
#include <QTouchEvent>

#include <algorithm>

namespace piolo::models {

MarkArea::MarkArea(QQuickItem* parent) : QQuickItem(parent) {
    setAcceptedMouseButtons(Qt::AllButtons);
    setAcceptTouchEvents(true);
}

void MarkArea::mousePressEvent(QMouseEvent* event) {
    event->accept();
    emit marked(event->timestamp());
}

// The second of two quick presses is a press like any other.
void MarkArea::mouseDoubleClickEvent(QMouseEvent* event) { event->accept(); }

void MarkArea::touchEvent(QTouchEvent* event) {
    event->accept();
    const auto& points = event->points();
    const bool pressed = std::any_of(points.begin(), points.end(), [](const QEventPoint& point) {
        return point.state() == QEventPoint::State::Pressed;
    });
    if (pressed) emit marked(event->timestamp());
}

} // namespace piolo::models
