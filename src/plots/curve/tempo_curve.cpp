// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/tempo_curve.h"

#include "plots/curve/curve_label.h"
#include "plots/curve/curve_layout.h"
#include "plots/curve/mark_shapes.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace piolo::plots {

namespace {

CurveStyle styleOf(QRgb paper, QRgb ink, QRgb faint, QRgb line, QRgb miss, QRgb clean) {
    CurveStyle style;
    style.paper = paper;
    style.ink = ink;
    style.faint = faint;
    style.line = line;
    style.miss = miss;
    style.clean = clean;
    style.font.setFamilies({QStringLiteral("Inter"), QStringLiteral("DejaVu Sans")});
    style.targetWord = QStringLiteral("target");
    style.dueWord = QStringLiteral("due");
    style.emptyWords = QStringLiteral("Nothing played yet");
    return style;
}

void drawEmpty(QPainter& painter, QSizeF size, const CurveStyle& style) {
    painter.setFont(curveFont(style, textPixelsFor(size)));
    painter.setPen(style.faint);
    const QRectF room = QRectF({0, 0}, size).adjusted(8, 8, -8, -8);
    painter.drawText(room, static_cast<int>(Qt::AlignCenter) | static_cast<int>(Qt::TextWordWrap),
                     style.emptyWords);
}

void drawFrame(QPainter& painter, const CurveLayout& layout, const CurveStyle& style) {
    painter.setPen(QPen(withAlpha(style.faint, 0.28), 1));
    for (const QLineF& line : layout.grid) painter.drawLine(line);
    painter.setPen(QPen(withAlpha(style.faint, 0.42), 1));
    for (const QLineF& line : layout.separators) painter.drawLine(line);
    painter.setPen(style.faint);
    for (const CurveLabel& label : layout.tempi) drawLabel(painter, label);
    for (const CurveLabel& label : layout.dates) drawLabel(painter, label);
}

void drawTarget(QPainter& painter, const CurveLayout& layout, const CurveStyle& style) {
    QPen pen(style.ink, std::max(1.0, layout.textPixels / 9));
    pen.setDashPattern({4, 3});
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.drawLine(layout.target);
    painter.setPen(style.ink);
    drawLabel(painter, layout.targetLabel);
}

void drawLine(QPainter& painter, const CurveLayout& layout, const CurveStyle& style) {
    QPen pen(style.line, layout.lineWidth);
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(layout.line);
    painter.setPen(QPen(style.paper, 1.5));
    painter.setBrush(style.line);
    const double radius = 0.32 * layout.textPixels;
    painter.drawEllipse(layout.line.back(), radius, radius);
}

} // namespace

CurveStyle lightCurveStyle() { return styleOf(0xfffdf7, 0x1e2736, 0x555c68, 0x9c630f, 0xa0341f, 0x0f766b); }

CurveStyle darkCurveStyle() { return styleOf(0x26241f, 0xf3ecdf, 0xb5ad9e, 0xe0a448, 0xf0917c, 0x5cc4b4); }

void drawTempoCurve(QPainter& painter, QSizeF size, const PassageRecord& record, const CurveView& view,
                    const CurveStyle& style) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (style.paper.alpha() > 0) painter.fillRect(QRectF({0, 0}, size), style.paper);
    const CurveSteps steps = stepsOf(record, view);
    if (steps.steps.empty()) {
        drawEmpty(painter, size, style);
    } else {
        const CurveLayout layout = layOut(steps, size, style);
        painter.setFont(curveFont(style, layout.textPixels));
        drawFrame(painter, layout, style);
        drawTarget(painter, layout, style);
        drawLine(painter, layout, style);
        for (const CurveMark& mark : layout.marks) drawMark(painter, mark, layout.markSize, style);
    }
    painter.restore();
}

} // namespace piolo::plots
