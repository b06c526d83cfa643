// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/mark_shapes.h"

#include <QPainter>

namespace piolo::plots {

namespace {

QPolygonF triangle(QPointF tip, double size) {
    return QPolygonF({tip, tip + QPointF(-size / 2, -0.9 * size), tip + QPointF(size / 2, -0.9 * size)});
}

} // namespace

void drawMark(QPainter& painter, const CurveMark& mark, double size, const CurveStyle& style) {
    const bool isTry = mark.kind != StepMark::miss;
    const QColor colour = mark.kind == StepMark::cleanTry ? style.clean : style.miss;
    painter.setBrush(isTry ? style.paper : colour);
    painter.setPen(isTry ? QPen(colour, 1.5) : QPen(style.paper, 1));
    if (mark.kind == StepMark::cleanTry)
        painter.drawEllipse(mark.at, 0.45 * size, 0.45 * size);
    else
        painter.drawConvexPolygon(triangle(mark.at + QPointF(0, 0.25 * size), size));
}

void drawDiamond(QPainter& painter, QPointF middle, double size, const CurveStyle& style) {
    const double half = 0.6 * size;
    painter.setBrush(style.clean);
    painter.setPen(QPen(style.paper, 1));
    painter.drawConvexPolygon(QPolygonF({middle + QPointF(0, -half), middle + QPointF(half, 0),
                                         middle + QPointF(0, half), middle + QPointF(-half, 0)}));
}

} // namespace piolo::plots
