// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_path.h"

#include "plots/curve/pixel_grid.h"

#include <cmath>

namespace piolo::plots {

namespace {

QPolygonF thinnedPath(const CurveSteps& steps, const CurveMapping& mapping) {
    QPolygonF path;
    PixelColumn column{-1, 0, 0, 0, 0};
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
        const double x = std::floor(mapping.xOf(static_cast<double>(i))) + 0.5;
        const double y = mapping.yOf(steps.steps[i].bpm);
        if (x != column.x) {
            if (i > 0) column.appendTo(path);
            column = PixelColumn::at(x, y);
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
    MarkCells taken(markSize);
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
        const CurveStep& step = steps.steps[i];
        if (step.mark == StepMark::none) continue;
        const double place = static_cast<double>(i) + (step.mark == StepMark::miss ? 1.0 : 0.5);
        const QPointF at(mapping.xOf(place), mapping.yOf(step.markBpm));
        if (taken.take(at)) marks.push_back({at, step.mark});
    }
    return marks;
}

} // namespace piolo::plots
