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

void TempoCurveItem::setSource(CurveSource* source) {
    if (source == source_) return;
    if (source_ != nullptr) disconnect(source_, nullptr, this, nullptr);
    source_ = source;
    if (source_ != nullptr) connect(source_, &CurveSource::curveChanged, this, &TempoCurveItem::redraw);
    emit sourceChanged();
    redraw();
}

void TempoCurveItem::redraw() {
    if (source_ != nullptr && source_->mayDraw() && isVisible()) update();
}

void TempoCurveItem::paint(QPainter* painter) {
    const PassageRecord* record = source_ == nullptr ? nullptr : source_->record();
    if (record == nullptr) return;
    plots::CurveStyle style = dark_ ? plots::darkCurveStyle() : plots::lightCurveStyle();
    style.paper = Qt::transparent;
    if (!family_.isEmpty()) style.font.setFamily(family_);
    style.font.setPixelSize(pixelSize_);
    style.targetWord = qtTrId("curve.target");
    style.emptyWords = qtTrId("curve.empty");
    style.locale = QLocale();
    plots::drawTempoCurve(*painter, size(), *record, plots::viewWithSteps(*record, source_->date(), days_),
                          style);
}

} // namespace piolo::models
