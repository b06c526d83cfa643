// SPDX-License-Identifier: GPL-3.0-or-later
// The drilled passage's tempo curve on the screen, drawn by src/plots.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "models/drill/drill_model.h"

namespace piolo::models {

/// Redraws if the passage changes while the drill is stopped; never while the click runs.
class TempoCurveItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_NAMED_ELEMENT(TempoCurve)
    Q_PROPERTY(piolo::models::DrillModel* drill READ drill WRITE setDrill NOTIFY drillChanged)
    Q_PROPERTY(bool dark MEMBER dark_ NOTIFY looksChanged)
    Q_PROPERTY(int days MEMBER days_ NOTIFY looksChanged)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY looksChanged)
    Q_PROPERTY(int pixelSize MEMBER pixelSize_ NOTIFY looksChanged)
public:
    explicit TempoCurveItem(QQuickItem* parent = nullptr);

    [[nodiscard]] DrillModel* drill() const { return drill_; }
    void setDrill(DrillModel* drill);
    void paint(QPainter* painter) override;

signals:
    void drillChanged();
    void looksChanged();

private:
    void redraw();

    DrillModel* drill_ = nullptr;
    bool dark_ = false;
    int days_ = 14;
    QString family_;
    int pixelSize_ = 12;
};

} // namespace piolo::models
