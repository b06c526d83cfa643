// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's tempo curve on the screen, drawn by src/plots.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "models/drill/curve_source.h"

namespace piolo::models {

/// Redraws if its passage changes; never while the click runs.
class TempoCurveItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_NAMED_ELEMENT(TempoCurve)
    Q_PROPERTY(piolo::models::CurveSource* source READ source WRITE setSource NOTIFY sourceChanged)
    Q_PROPERTY(bool dark MEMBER dark_ NOTIFY looksChanged)
    Q_PROPERTY(int days MEMBER days_ NOTIFY looksChanged)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY looksChanged)
    Q_PROPERTY(int pixelSize MEMBER pixelSize_ NOTIFY looksChanged)
public:
    explicit TempoCurveItem(QQuickItem* parent = nullptr);

    [[nodiscard]] CurveSource* source() const { return source_; }
    void setSource(CurveSource* source);
    void paint(QPainter* painter) override;

signals:
    void sourceChanged();
    void looksChanged();

private:
    void redraw();

    CurveSource* source_ = nullptr;
    bool dark_ = false;
    int days_ = 14;
    QString family_;
    int pixelSize_ = 12;
};

} // namespace piolo::models
