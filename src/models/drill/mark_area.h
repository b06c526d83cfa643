// SPDX-License-Identifier: GPL-3.0-or-later
// The part of the screen where a press marks a miss.
#pragma once

#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

namespace piolo::models {

/// Reports every press of a mouse button, a pen or a finger as it goes down, however long it is held and
/// whatever else is down. Window thread.
class MarkArea : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
public:
    explicit MarkArea(QQuickItem* parent = nullptr);

signals:
    /// `stamp`: the timestamp of the event, as for eventMoment().
    void marked(quint64 stamp);

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void touchEvent(QTouchEvent* event) override;
};

} // namespace piolo::models
