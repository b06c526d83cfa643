// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_shapes.h"

#include <QPainterPathStroker>
#include <QTransform>

namespace piolo::plots {

namespace {

QPainterPath stroked(const QPainterPath& line, double width) {
    QPainterPathStroker stroker;
    stroker.setWidth(width);
    stroker.setCapStyle(Qt::RoundCap);
    stroker.setJoinStyle(Qt::RoundJoin);
    return stroker.createStroke(line).simplified();
}

QPainterPath strokes(std::initializer_list<QLineF> lines, double width) {
    QPainterPath path;
    for (const QLineF& line : lines) {
        path.moveTo(line.p1());
        path.lineTo(line.p2());
    }
    return stroked(path, width);
}

QPainterPath disc(QPointF middle, double rx, double ry) {
    QPainterPath path;
    path.addEllipse(middle, rx, ry);
    return path;
}

QPainterPath box(double left, double top, double width, double height) {
    QPainterPath path;
    path.addRect(left, top, width, height);
    return path;
}

QPainterPath head(double hole) {
    QPainterPath path = disc({0, 0}, 0.62, 0.46);
    if (hole > 0) path = path.subtracted(disc({0, 0}, hole, 0.27));
    return QTransform().translate(0.66, 0).rotate(-18).map(path);
}

QPainterPath wholeHead() { return disc({0.8, 0}, 0.8, 0.5).subtracted(disc({0.8, 0}, 0.38, 0.34)); }

QPainterPath trebleClef() {
    QPainterPath line;
    line.moveTo(1.4, 0.5);
    line.cubicTo(0.4, 0.6, 0.5, -0.7, 1.4, -0.7);
    line.cubicTo(2.6, -0.7, 2.5, 1, 1.3, 1);
    line.cubicTo(-0.6, 1, 0, -1.4, 1.1, -2.2);
    line.cubicTo(2, -3, 1.9, -4.6, 1.5, -4.3);
    line.cubicTo(0.9, -3.8, 1.2, -2, 1.7, 1.8);
    line.cubicTo(1.8, 2.6, 0.9, 2.7, 0.8, 2.1);
    return stroked(line, 0.26);
}

QPainterPath bassClef() {
    QPainterPath line;
    line.moveTo(0.5, 0.1);
    line.cubicTo(0.2, -1.2, 2, -1.3, 1.9, 0.2);
    line.cubicTo(1.8, 1.3, 1.1, 1.8, 0.3, 2.2);
    QPainterPath path = stroked(line, 0.3);
    path.addPath(disc({0.5, 0}, 0.35, 0.35));
    path.addPath(disc({2.4, -0.5}, 0.2, 0.2));
    path.addPath(disc({2.4, 0.5}, 0.2, 0.2));
    return path;
}

QPainterPath flat() {
    QPainterPath line;
    line.moveTo(0, -1.7);
    line.lineTo(0, 0.5);
    line.cubicTo(0.9, 0, 0.8, -0.7, 0, -0.3);
    return stroked(line, 0.16);
}

QPainterPath doubleFlat() {
    QPainterPath path = flat();
    path.addPath(flat().translated(0.75, 0));
    return path;
}

QPainterPath restOf(int hooks) {
    QPainterPath path = strokes({{1.0, -1.0, 0.3, 0.2 + hooks}}, 0.16);
    for (int i = 0; i < hooks; ++i) {
        path.addPath(disc({0.25 - 0.2 * i + 0.1, -0.7 + i}, 0.25, 0.25));
        path.addPath(strokes({{0.3 - 0.2 * i, -0.6 + i, 0.9 - 0.55 * i, -0.8 + i}}, 0.16));
    }
    return path;
}

QPainterPath flagOf(int hooks) {
    QPainterPath path;
    for (int i = 0; i < hooks; ++i) {
        QPainterPath line;
        line.moveTo(0.08, 0.1 + 0.75 * i);
        line.cubicTo(0.1, 1 + 0.75 * i, 1, 1 + 0.75 * i, 0.8, 2.2 + 0.75 * i);
        path.addPath(stroked(line, 0.18));
    }
    return path;
}

QPainterPath upright(StaffGlyph glyph) {
    switch (glyph) {
    case StaffGlyph::trebleClef:
        return trebleClef();
    case StaffGlyph::bassClef:
        return bassClef();
    case StaffGlyph::doubleFlat:
        return doubleFlat();
    case StaffGlyph::flat:
        return flat();
    case StaffGlyph::natural:
        return strokes({{0, -1.4, 0, 0.6}, {0.6, -0.6, 0.6, 1.4}, {0, -0.3, 0.6, -0.5}, {0, 0.5, 0.6, 0.3}},
                       0.16);
    case StaffGlyph::sharp:
        return strokes({{0.3, -1.3, 0.3, 1.4}, {0.7, -1.4, 0.7, 1.3}, {0, -0.3, 1, -0.6}, {0, 0.6, 1, 0.3}},
                       0.16);
    case StaffGlyph::doubleSharp:
        return strokes({{0, -0.45, 0.9, 0.45}, {0, 0.45, 0.9, -0.45}}, 0.25);
    case StaffGlyph::wholeHead:
        return wholeHead();
    case StaffGlyph::halfHead:
        return head(0.46);
    case StaffGlyph::wholeRest:
        return box(0, -1, 1.2, 0.5);
    case StaffGlyph::halfRest:
        return box(0, -0.5, 1.2, 0.5);
    case StaffGlyph::quarterRest:
        return strokes(
            {{0.1, -1.4, 0.7, -0.6}, {0.7, -0.6, 0.1, 0}, {0.1, 0, 0.8, 0.7}, {0.8, 0.7, 0.3, 1.3}}, 0.25);
    case StaffGlyph::accent:
        return strokes({{0, -0.4, 1.3, 0}, {1.3, 0, 0, 0.4}}, 0.16);
    case StaffGlyph::dot:
        return disc({0.2, 0}, 0.2, 0.2);
    default:
        break;
    }
    const auto above = [glyph](StaffGlyph first) {
        return static_cast<int>(glyph) - static_cast<int>(first) + 1;
    };
    if (glyph >= StaffGlyph::eighthFlag && glyph <= StaffGlyph::hundredTwentyEighthFlag)
        return flagOf(above(StaffGlyph::eighthFlag));
    if (glyph >= StaffGlyph::eighthRest && glyph <= StaffGlyph::hundredTwentyEighthRest)
        return restOf(above(StaffGlyph::eighthRest));
    return head(0);
}

} // namespace

QPainterPath plainShape(StaffGlyph glyph) {
    QPainterPath path = upright(glyph);
    // Strokes may cross each other; the hole in a head stays open.
    const bool head = glyph == StaffGlyph::wholeHead || glyph == StaffGlyph::halfHead;
    path.setFillRule(head ? Qt::OddEvenFill : Qt::WindingFill);
    return path;
}

} // namespace piolo::plots
