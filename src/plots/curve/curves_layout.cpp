// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curves_layout.h"

#include "plots/curve/curves_goals.h"
#include "plots/curve/curves_path.h"
#include "plots/curve/curves_ticks.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace piolo::plots {

namespace {

constexpr int mostTempi = 7;
/// Share of the picture's width available for the names at the ends of the lines.
constexpr double mostForNames = 0.3;

using Series = std::span<const CurveSeries>;

CurveScale seenScale(Series series, const CurvesView& view, int ticks) {
    double low = std::numeric_limits<double>::max();
    double high = 0;
    std::vector<double> targets;
    for (const CurveSeries& one : series) {
        const PointRange seen = pointsBetween(one, view.from, view.to);
        for (std::size_t i = seen.first; i < seen.end; ++i) {
            low = std::min(low, one.points[i].bpm);
            high = std::max(high, one.points[i].bpm);
        }
        if (seen.end > seen.first) targets.push_back(one.target);
    }
    return high > 0 ? scaleBetween(low, topWithTargets(targets, low, high), ticks)
                    : scaleBetween(60, 120, ticks);
}

double nameWidth(Series series, QSizeF size, const QFontMetricsF& metrics) {
    double widest = 0;
    for (const CurveSeries& one : series) widest = std::max(widest, metrics.horizontalAdvance(one.name));
    return std::ceil(std::min(widest, mostForNames * size.width()));
}

void addGrid(CurvesLayout& made, const QFontMetricsF& metrics) {
    for (const double tick : made.scale.ticks) {
        const double y = made.at({made.view.from, tick, {}, {}, {}, 0, 0}).y();
        made.grid.emplace_back(made.frame.left(), y, made.frame.right(), y);
        const QString text = QString::number(tick, 'g', 6);
        const double width = metrics.horizontalAdvance(text);
        made.tempi.push_back({QRectF(made.frame.left() - 0.6 * made.textPixels - width,
                                     y - metrics.height() / 2, width, metrics.height()),
                              text});
    }
}

double xOf(const CurvesLayout& layout, double x) { return layout.at({x, 0, {}, {}, {}, 0, 0}).x(); }

void addPlaces(CurvesLayout& made, CurveBy by, const CurveStyle& style, const QFontMetricsF& metrics) {
    const QString widest = by == CurveBy::days ? QStringLiteral("28 Mmm 2026") : QStringLiteral("100000");
    const double each = metrics.horizontalAdvance(widest) + 1.5 * made.textPixels;
    const int most = std::max(2, static_cast<int>(made.frame.width() / each));
    for (const CurvesTick& tick : curvesTicks(by, made.view.from, made.view.to, most, style.locale)) {
        const double width = metrics.horizontalAdvance(tick.text);
        const double left = std::clamp(xOf(made, tick.x) - width / 2, made.frame.left(),
                                       std::max(made.frame.left(), made.frame.right() - width));
        const QRectF box(left, made.frame.bottom() + 0.6 * made.textPixels, width, metrics.height());
        if (made.places.empty() || made.places.back().box.right() + 0.8 * made.textPixels < box.left())
            made.places.push_back({box, tick.text});
    }
}

CurvesLine lineOf(const CurveSeries& series, CurvesLayout& made, bool alone) {
    CurvesLine line;
    const PointRange seen = pointsBetween(series, made.view.from, made.view.to);
    if (seen.first == seen.end) return line;
    line.path = curvesPath(series, seen, made);
    addCurvesMarks(series, seen, made, line);
    // The last point in the range may be the one beyond the edge.
    const bool beyond = series.points[seen.end - 1].x > made.view.to && seen.end - seen.first > 1;
    const SeriesPoint& last = series.points[seen.end - (beyond ? 2 : 1)];
    if (last.x >= made.view.from) line.end = made.at(last);
    addTarget(made, line, series.target, alone);
    return line;
}

/// One below the other at the right edge, each as close to the end of its line as the others allow.
void nameLines(CurvesLayout& made, Series series, double width, const QFontMetricsF& metrics) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < made.lines.size(); ++i)
        if (made.lines[i].end) order.push_back(i);
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return made.lines[a].end->y() < made.lines[b].end->y(); });
    const double height = metrics.height();
    double room = made.frame.bottom() - static_cast<double>(order.size()) * height;
    double next = made.frame.top() - height / 2;
    for (const std::size_t i : order) {
        room += height;
        const double wanted = made.lines[i].end->y() - height / 2;
        const double top = std::max(next, std::min(wanted, room - height / 2));
        made.lines[i].label = {QRectF(made.frame.right() + 0.8 * made.textPixels, top, width, height),
                               metrics.elidedText(series[i].name, Qt::ElideMiddle, width)};
        next = top + height;
    }
}

} // namespace

QPointF CurvesLayout::at(const SeriesPoint& point) const {
    const double across = (point.x - view.from) / (view.to - view.from);
    const double up = (point.bpm - scale.low) / (scale.high - scale.low);
    return {frame.left() + across * frame.width(), frame.bottom() - up * frame.height()};
}

CurvesView wholeView(std::span<const CurveSeries> series, Date today) {
    const bool byDays = !series.empty() && series.front().by == CurveBy::days;
    double from = std::numeric_limits<double>::max();
    double to = byDays ? std::numeric_limits<double>::lowest() : 1;
    for (const CurveSeries& one : series) {
        if (one.points.empty()) continue;
        from = std::min(from, one.points.front().x);
        to = std::max(to, one.points.back().x);
    }
    if (from > to) return {0, 1};
    if (byDays) to = endWithGoals(series, today, from, to);
    return {from, std::max(to, from + 1)};
}

CurvesLayout layOutCurves(std::span<const CurveSeries> series, const CurvesView& view, QSizeF size,
                          const CurveStyle& style) {
    CurvesLayout made;
    made.view = view;
    made.textPixels = textPixelsFor(size);
    made.markSize = 0.75 * made.textPixels;
    const QFontMetricsF metrics(curveFont(style, made.textPixels));
    const double names = nameWidth(series, size, metrics);
    const double text = made.textPixels;
    const int ticks = std::clamp(static_cast<int>((size.height() - 4.2 * text) / (2.6 * text)), 2, mostTempi);
    made.scale = seenScale(series, view, ticks);
    const double numbers = metrics.horizontalAdvance(QString::number(made.scale.ticks.back(), 'g', 6));
    made.frame = QRectF({0, 0}, size)
                     .adjusted(std::ceil(numbers + 1.1 * text), std::ceil(1.6 * text),
                               -std::ceil(names + 1.2 * text), -std::ceil(2.2 * text));
    addGrid(made, metrics);
    for (const CurveSeries& one : series) made.lines.push_back(lineOf(one, made, series.size() == 1));
    addPlaces(made, series.empty() ? CurveBy::days : series.front().by, style, metrics);
    addDues(made, series, style, metrics);
    nameLines(made, series, names, metrics);
    if (series.size() == 1 && made.lines.front().end) nameTarget(made, series.front().target, style, metrics);
    return made;
}

std::optional<CurvesPoint> pointNear(std::span<const CurveSeries> series, const CurvesLayout& layout,
                                     QPointF where, double reach) {
    const double perPixel = (layout.view.to - layout.view.from) / std::max(1.0, layout.frame.width());
    const double x = layout.view.from + (where.x() - layout.frame.left()) * perPixel;
    std::optional<CurvesPoint> found;
    double nearest = std::numeric_limits<double>::max();
    for (std::size_t s = 0; s < series.size(); ++s) {
        const PointRange close = pointsBetween(series[s], x - reach * perPixel, x + reach * perPixel);
        for (std::size_t i = close.first; i < close.end; ++i) {
            const QPointF at = layout.at(series[s].points[i]);
            if (std::abs(at.x() - where.x()) > reach || !layout.frame.adjusted(-1, -1, 1, 1).contains(at))
                continue;
            const double away = std::hypot(at.x() - where.x(), at.y() - where.y());
            if (away >= nearest) continue;
            nearest = away;
            found = CurvesPoint{s, i};
        }
    }
    return found;
}

} // namespace piolo::plots
