// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve_path.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace piolo::plots {

namespace {

/// The steps of one pixel column.
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

QPolygonF thinnedPath(const CurveSteps& steps, const CurveMapping& mapping) {
    QPolygonF path;
    Column column{-1, 0, 0, 0, 0};
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
        const double x = std::floor(mapping.xOf(static_cast<double>(i))) + 0.5;
        const double y = mapping.yOf(steps.steps[i].bpm);
        if (x != column.x) {
            if (i > 0) column.appendTo(path);
            column = {x, y, y, y, y};
        }
        column.add(y);
    }
    column.appendTo(path);
    return path;
}

QPolygonF stairs(const CurveSteps& steps, const CurveMapping& mapping) {
    QPolygonF path;
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
        const double y = mapping.yOf(steps.steps[i].bpm);
        const auto step = static_cast<double>(i);
        path << QPointF(mapping.xOf(step), y) << QPointF(mapping.xOf(step + 1), y);
    }
    return path;
}

} // namespace

QPolygonF pathOf(const CurveSteps& steps, const CurveMapping& mapping) {
    QPolygonF path = mapping.stepWidth < 1 ? thinnedPath(steps, mapping) : stairs(steps, mapping);
    const QPointF end(mapping.xOf(static_cast<double>(steps.steps.size())), mapping.yOf(steps.last));
    if (path.back() != end) path << end;
    return path;
}

std::vector<CurveMark> marksOf(const CurveSteps& steps, const CurveMapping& mapping, double markSize) {
    std::vector<CurveMark> marks;
    std::set<std::pair<int, int>> taken;
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
        const CurveStep& step = steps.steps[i];
        if (step.mark == StepMark::none) continue;
        const double place = static_cast<double>(i) + (step.mark == StepMark::miss ? 1.0 : 0.5);
        const QPointF at(mapping.xOf(place), mapping.yOf(step.markBpm));
        const std::pair cell(static_cast<int>(at.x() / (markSize * 0.7)),
                             static_cast<int>(at.y() / (markSize * 0.7)));
        if (taken.insert(cell).second) marks.push_back({at, step.mark});
    }
    return marks;
}

} // namespace piolo::plots
