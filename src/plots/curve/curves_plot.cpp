// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curves_plot.h"
#include "plots/curve/curve_label.h"

#include "plots/curve/mark_shapes.h"

#include <QPainter>

#include <algorithm>
#include <array>

namespace piolo::plots {

namespace {

struct Dash {
    std::array<qreal, 4> lengths{};
    qsizetype count = 0; ///< 0: solid
};
constexpr std::array dashes{
    Dash{{}, 0}, Dash{{5, 2.5}, 2}, Dash{{1, 1.8}, 2}, Dash{{6, 2, 1, 2}, 4}, Dash{{2.5, 1.5}, 2},
};

QColor inkOf(std::size_t line, const CurveStyle& style) {
    const std::array inks{style.line, style.clean, style.ink, style.faint};
    return inks[line % inks.size()];
}

QPen penOf(std::size_t line, double width, const CurveStyle& style) {
    QPen pen(inkOf(line, style), width);
    pen.setJoinStyle(Qt::RoundJoin);
    pen.setCapStyle(Qt::FlatCap);
    const Dash& dash = dashes[line % dashes.size()];
    if (dash.count > 0)
        pen.setDashPattern(QList<qreal>(dash.lengths.begin(), dash.lengths.begin() + dash.count));
    return pen;
}

void drawGround(QPainter& painter, const CurvesLayout& layout, const CurveStyle& style) {
    painter.setPen(QPen(withAlpha(style.faint, 0.28), 1));
    for (const QLineF& line : layout.grid) painter.drawLine(line);
    painter.setPen(style.faint);
    for (const CurveLabel& label : layout.tempi) drawLabel(painter, label);
    for (const CurveLabel& label : layout.places) drawLabel(painter, label);
}

void drawDashed(QPainter& painter, const QLineF& line, const QColor& ink, double width) {
    QPen pen(ink, width);
    pen.setDashPattern({4, 3});
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.drawLine(line);
}

void drawGoals(QPainter& painter, const CurvesLayout& layout, const CurveStyle& style) {
    const double width = std::max(1.0, layout.textPixels / 9);
    for (std::size_t i = 0; i < layout.lines.size(); ++i)
        if (!layout.lines[i].target.isNull())
            drawDashed(painter, layout.lines[i].target,
                       layout.lines.size() == 1 ? style.ink : inkOf(i, style), width);
    for (const QLineF& due : layout.dues) drawDashed(painter, due, style.ink, width);
    painter.setPen(style.ink);
    for (const CurveLabel& label : layout.dueLabels) drawLabel(painter, label);
    if (!layout.targetLabel.text.isEmpty()) drawLabel(painter, layout.targetLabel);
}

void drawCurve(QPainter& painter, const CurvesLayout& layout, std::size_t index, const CurveStyle& style) {
    const CurvesLine& line = layout.lines[index];
    const bool crowded = static_cast<double>(line.path.size()) > layout.frame.width();
    painter.save();
    painter.setClipRect(
        layout.frame.adjusted(-layout.markSize, -layout.markSize, layout.markSize, layout.markSize));
    painter.setPen(penOf(index, crowded ? 1.0 : std::max(1.6, layout.textPixels / 6), style));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(line.path);
    for (const QPointF& secure : line.secures) drawDiamond(painter, secure, layout.markSize, style);
    for (const CurveMark& mark : line.marks) drawMark(painter, mark, layout.markSize, style);
    painter.restore();
}

void drawName(QPainter& painter, const CurvesLayout& layout, std::size_t index, const CurveStyle& style) {
    const CurvesLine& line = layout.lines[index];
    if (!line.end) return;
    painter.setPen(QPen(style.paper, 1.5));
    painter.setBrush(inkOf(index, style));
    const double radius = 0.3 * layout.textPixels;
    painter.drawEllipse(*line.end, radius, radius);
    painter.setPen(inkOf(index, style));
    drawLabel(painter, line.label, static_cast<int>(Qt::AlignLeft) | static_cast<int>(Qt::AlignVCenter));
}

} // namespace

void drawCurves(QPainter& painter, QSizeF size, const CurvesLayout& layout, const CurveStyle& style,
                std::optional<QPointF> pointed) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (style.paper.alpha() > 0) painter.fillRect(QRectF({0, 0}, size), style.paper);
    painter.setFont(curveFont(style, layout.textPixels));
    painter.setPen(style.faint);
    if (layout.lines.empty())
        painter.drawText(layout.frame, static_cast<int>(Qt::AlignCenter) | static_cast<int>(Qt::TextWordWrap),
                         style.emptyWords);
    drawGround(painter, layout, style);
    drawGoals(painter, layout, style);
    for (std::size_t i = 0; i < layout.lines.size(); ++i) drawName(painter, layout, i, style);
    for (std::size_t i = 0; i < layout.lines.size(); ++i) drawCurve(painter, layout, i, style);
    if (pointed) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(style.ink, 2));
        painter.drawEllipse(*pointed, layout.markSize, layout.markSize);
    }
    painter.restore();
}

} // namespace piolo::plots
