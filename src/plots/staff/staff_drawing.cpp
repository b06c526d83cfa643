// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_drawing.h"

#include "plots/curve/tempo_curve.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace piolo::plots {

namespace {

constexpr double arcThickness = 0.2;
constexpr double barMark = 0.34;
constexpr double arrow = 0.9;

QPainterPath arcPath(const StaffArc& arc) {
    const QPointF thick(0, arc.over.y() < arc.from.y() ? -arcThickness : arcThickness);
    QPainterPath path(arc.from);
    path.cubicTo(arc.over + thick, arc.back + thick, arc.to);
    path.cubicTo(arc.back, arc.over, arc.from);
    return path;
}

void drawSign(QPainter& painter, const StaffSign& sign, const StaffGlyphs& glyphs) {
    painter.save();
    painter.translate(sign.at);
    if (sign.turned) painter.scale(1, -1);
    painter.drawPath(glyphs.path(sign.glyph));
    painter.restore();
}

void drawStroke(QPainter& painter, const StaffStroke& stroke, const QColor& ink) {
    QPen pen(ink, stroke.width);
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.drawLine(stroke.line);
}

void drawWords(QPainter& painter, const StaffSystem& system) {
    for (const StaffWord& word : system.words)
        painter.drawPath(StaffGlyphs::text(word.text, word.height).translated(word.box.bottomLeft()));
}

void drawInk(QPainter& painter, const StaffSystem& system, const StaffGlyphs& glyphs,
             const StaffStyle& style) {
    for (const StaffStroke& stroke : system.strokes)
        drawStroke(painter, stroke, stroke.part == StaffPart::staffLine ? style.faint : style.ink);
    painter.setPen(Qt::NoPen);
    painter.setBrush(style.ink);
    for (const StaffBeamShape& beam : system.beams) painter.drawPolygon(beam.shape);
    for (const StaffSign& sign : system.signs) drawSign(painter, sign, glyphs);
    for (const StaffArc& arc : system.arcs) painter.drawPath(arcPath(arc));
    drawWords(painter, system);
}

double markY(const StaffSystem& system) { return std::max(5.0, system.extent.bottom() + 0.4); }

void markBar(QPainter& painter, const StaffSystem& system, std::size_t bar, const StaffStyle& style) {
    for (const StaffBarSpan& place : system.bars) {
        if (place.bar != bar) continue;
        painter.setPen(Qt::NoPen);
        painter.setBrush(style.lit);
        painter.drawRect(QRectF(place.left + 0.2, markY(system), place.right - place.left - 0.4, barMark));
    }
}

void markNote(QPainter& painter, const StaffSystem& system, std::size_t note, const StaffStyle& style) {
    QRectF place;
    for (const StaffSign& sign : system.signs)
        if (sign.part == StaffPart::head && sign.note == note) place = place.isNull() ? sign.box : place;
    if (place.isNull()) return;
    const double middle = place.center().x();
    const double y = markY(system);
    QPolygonF shape;
    shape << QPointF(middle, y - 0.1) << QPointF(middle + arrow, y + arrow)
          << QPointF(middle - arrow, y + arrow);
    painter.setPen(Qt::NoPen);
    painter.setBrush(style.lit);
    painter.drawPolygon(shape);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(style.lit, 0.22));
    painter.drawRoundedRect(place.adjusted(-0.35, -0.4, 0.35, 0.4), 0.4, 0.4);
}

void drawSystem(QPainter& painter, const StaffSystem& system, const StaffGlyphs& glyphs,
                const StaffStyle& style, const StaffMarks& marks) {
    if (marks.bar) markBar(painter, system, *marks.bar, style);
    drawInk(painter, system, glyphs, style);
    if (marks.note) markNote(painter, system, *marks.note, style);
}

/// The same colours as the curves.
StaffStyle inksOf(const CurveStyle& curve) { return {curve.paper, curve.ink, curve.faint, curve.line}; }

class Scaled {
public:
    Scaled(QPainter& painter, double space) : painter_(painter) {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(space, space);
        painter.translate(StaffLayout::margin, 0);
    }
    ~Scaled() { painter_.restore(); }
    Scaled(const Scaled&) = delete;
    Scaled& operator=(const Scaled&) = delete;

private:
    QPainter& painter_;
};

} // namespace

StaffStyle lightStaffStyle() { return inksOf(lightCurveStyle()); }

StaffStyle darkStaffStyle() { return inksOf(darkCurveStyle()); }

QSizeF sizeOf(const StaffLayout& layout) { return QSizeF(layout.width, layout.height) * layout.space; }

double heightOf(const StaffLayout& layout, std::size_t system) {
    const StaffSystem& of = layout.systems[system];
    return (markY(of) + arrow - of.extent.top()) * layout.space;
}

void drawStaff(QPainter& painter, const StaffLayout& layout, const StaffGlyphs& glyphs,
               const StaffStyle& style, const StaffMarks& marks) {
    if (style.paper.alpha() > 0) painter.fillRect(QRectF({0, 0}, sizeOf(layout)), style.paper);
    const Scaled scaled(painter, layout.space);
    for (const StaffSystem& system : layout.systems) {
        painter.save();
        painter.translate(0, system.staffTop);
        drawSystem(painter, system, glyphs, style, marks);
        painter.restore();
    }
}

void drawStaffSystem(QPainter& painter, const StaffLayout& layout, std::size_t system,
                     const StaffGlyphs& glyphs, const StaffStyle& style, const StaffMarks& marks) {
    const Scaled scaled(painter, layout.space);
    const StaffSystem& of = layout.systems[system];
    painter.translate(0, -of.extent.top());
    drawSystem(painter, of, glyphs, style, marks);
}

} // namespace piolo::plots
