// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/tempo_curve_item.h"

#include "plots/curve/tempo_curve.h"

#include <QLocale>
#include <QPainter>

namespace piolo::models {

TempoCurveItem::TempoCurveItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &TempoCurveItem::looksChanged, this, &TempoCurveItem::redraw);
    connect(this, &QQuickItem::visibleChanged, this, &TempoCurveItem::redraw);
}

void TempoCurveItem::setDrill(DrillModel* drill) {
    if (drill == drill_) return;
    if (drill_ != nullptr) disconnect(drill_, nullptr, this, nullptr);
    drill_ = drill;
    if (drill_ != nullptr) {
        connect(drill_, &DrillModel::passageChanged, this, &TempoCurveItem::redraw);
        connect(drill_, &DrillModel::stateChanged, this, &TempoCurveItem::redraw);
    }
    emit drillChanged();
    redraw();
}

void TempoCurveItem::redraw() {
    if (drill_ != nullptr && drill_->state() != DrillModel::State::Playing && isVisible()) update();
}

void TempoCurveItem::paint(QPainter* painter) {
    const PassageRecord* record = drill_ == nullptr ? nullptr : drill_->record();
    if (record == nullptr) return;
    plots::CurveStyle style = dark_ ? plots::darkCurveStyle() : plots::lightCurveStyle();
    style.paper = Qt::transparent;
    if (!family_.isEmpty()) style.font.setFamily(family_);
    style.font.setPixelSize(pixelSize_);
    style.targetWord = qtTrId("curve.target");
    style.emptyWords = qtTrId("curve.empty");
    style.locale = QLocale();
    plots::drawTempoCurve(*painter, size(), *record, {drill_->date(), days_}, style);
}

} // namespace piolo::models
