// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/tempo_curve_item.h"

#include "plots/curve/tempo_curve.h"

#include <QLocale>
#include <QPainter>

namespace piolo::models {

namespace {

/// The last day of the curve: today, or the last day of practice if it would show nothing.
Date endOf(const PassageRecord& record, Date today, int days) {
    if (record.entries.empty()) return today;
    const Date last = record.entries.back().at.date();
    return today.daysSince1970() - last.daysSince1970() < days ? today : last;
}

} // namespace

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
    plots::drawTempoCurve(*painter, size(), *record, {endOf(*record, source_->date(), days_), days_}, style);
}

} // namespace piolo::models
