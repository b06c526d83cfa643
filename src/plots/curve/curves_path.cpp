// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curves_path.h"

#include "plots/curve/pixel_grid.h"

#include <cmath>

namespace piolo::plots {

namespace {

QPolygonF thinned(const CurveSeries& series, PointRange seen, const CurvesLayout& layout) {
    QPolygonF path;
    PixelColumn column;
    for (std::size_t i = seen.first; i < seen.end; ++i) {
        const QPointF at = layout.at(series.points[i]);
        const double x = std::floor(at.x()) + 0.5;
        if (i == seen.first || x != column.x) {
            if (i != seen.first) column.appendTo(path);
            column = PixelColumn::at(x, at.y());
        }
        column.add(at.y());
    }
    if (seen.end > seen.first) column.appendTo(path);
    return path;
}

QPolygonF pointToPoint(const CurveSeries& series, PointRange seen, const CurvesLayout& layout) {
    QPolygonF path;
    for (std::size_t i = seen.first; i < seen.end; ++i) path << layout.at(series.points[i]);
    return path;
}

QPolygonF stairs(const CurveSeries& series, PointRange seen, const CurvesLayout& layout) {
    QPolygonF path;
    for (std::size_t i = seen.first; i < seen.end; ++i) {
        const QPointF at = layout.at(series.points[i]);
        if (!path.isEmpty() && path.back().y() != at.y()) path << QPointF(at.x(), path.back().y());
        path << at;
    }
    return path;
}

} // namespace

QPolygonF curvesPath(const CurveSeries& series, PointRange seen, const CurvesLayout& layout) {
    const auto count = static_cast<double>(seen.end - seen.first);
    if (count > layout.frame.width()) return thinned(series, seen, layout);
    return series.by == CurveBy::runs ? stairs(series, seen, layout) : pointToPoint(series, seen, layout);
}

void addCurvesMarks(const CurveSeries& series, PointRange seen, const CurvesLayout& layout,
                    CurvesLine& line) {
    MarkCells marks(layout.markSize);
    MarkCells secures(layout.markSize);
    for (std::size_t i = seen.first; i < seen.end; ++i) {
        const SeriesPoint& point = series.points[i];
        if (point.mark == StepMark::none && !point.secure) continue;
        if (point.x < layout.view.from || point.x > layout.view.to) continue;
        const QPointF at = layout.at(point);
        if (point.secure && secures.take(at)) line.secures.push_back(at);
        if (point.mark != StepMark::none && marks.take(at)) line.marks.push_back({at, point.mark});
    }
}

} // namespace piolo::plots
