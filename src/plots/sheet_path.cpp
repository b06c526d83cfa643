// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/sheet_path.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace piolo::plots {

namespace {

/// The points of one pixel column.
struct Column {
    double x = 0;
    double first = 0, low = 0, high = 0, last = 0;

    void add(double y) {
        low = std::min(low, y);
        high = std::max(high, y);
        last = y;
    }
    void appendTo(QPolygonF& path) const {
        for (const double y : {first, low, high, last}) {
            const QPointF point(x, y);
            if (path.isEmpty() || path.back() != point) path << point;
        }
    }
};

QPolygonF thinned(const CurveSeries& series, PointRange seen, const SheetLayout& layout) {
    QPolygonF path;
    Column column;
    for (std::size_t i = seen.first; i < seen.end; ++i) {
        const QPointF at = layout.at(series.points[i]);
        const double x = std::floor(at.x()) + 0.5;
        if (i == seen.first || x != column.x) {
            if (i != seen.first) column.appendTo(path);
            column = {x, at.y(), at.y(), at.y(), at.y()};
        }
        column.add(at.y());
    }
    if (seen.end > seen.first) column.appendTo(path);
    return path;
}

QPolygonF pointToPoint(const CurveSeries& series, PointRange seen, const SheetLayout& layout) {
    QPolygonF path;
    for (std::size_t i = seen.first; i < seen.end; ++i) path << layout.at(series.points[i]);
    return path;
}

QPolygonF stairs(const CurveSeries& series, PointRange seen, const SheetLayout& layout) {
    QPolygonF path;
    for (std::size_t i = seen.first; i < seen.end; ++i) {
        const QPointF at = layout.at(series.points[i]);
        if (!path.isEmpty() && path.back().y() != at.y()) path << QPointF(at.x(), path.back().y());
        path << at;
    }
    return path;
}

/// Which cells of the sheet have a mark already.
class Taken {
public:
    explicit Taken(double cell) : cell_(std::max(cell, 1.0)) {}
    bool take(QPointF at) {
        return cells_
            .insert(
                {static_cast<int>(std::floor(at.x() / cell_)), static_cast<int>(std::floor(at.y() / cell_))})
            .second;
    }

private:
    double cell_;
    std::set<std::pair<int, int>> cells_;
};

} // namespace

QPolygonF sheetPath(const CurveSeries& series, PointRange seen, const SheetLayout& layout) {
    const auto count = static_cast<double>(seen.end - seen.first);
    if (count > layout.frame.width()) return thinned(series, seen, layout);
    return series.by == CurveBy::runs ? stairs(series, seen, layout) : pointToPoint(series, seen, layout);
}

void addSheetMarks(const CurveSeries& series, PointRange seen, const SheetLayout& layout, SheetLine& line) {
    Taken marks(0.7 * layout.markSize);
    Taken secures(0.7 * layout.markSize);
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
