// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_scale.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace piolo::plots {

namespace {

constexpr double leastRange = 10;

void widen(CurveScale& scale, double bpm) {
    scale.low = std::min(scale.low, bpm);
    scale.high = std::max(scale.high, bpm);
}

int ticksBetween(double low, double high, double step) {
    return static_cast<int>(std::floor(high / step) - std::floor(low / step)) + 1;
}

double stepFor(double low, double high, int mostTicks) {
    constexpr std::array<double, 9> steps{1, 2, 5, 10, 20, 50, 100, 200, 500};
    const auto* found = std::find_if(steps.begin(), steps.end(),
                                     [&](double step) { return ticksBetween(low, high, step) <= mostTicks; });
    return found == steps.end() ? steps.back() : *found;
}

} // namespace

CurveScale scaleBetween(double low, double high, int mostTicks) {
    CurveScale scale{std::min(low, high - leastRange), high, {}};
    const double step = stepFor(scale.low, scale.high, std::max(2, mostTicks));
    scale.low = std::floor(scale.low / step) * step;
    const int count = ticksBetween(scale.low, scale.high, step);
    for (int i = 0; i < count; ++i) scale.ticks.push_back(scale.low + i * step);
    return scale;
}

CurveScale scaleOf(const CurveSteps& steps, int mostTicks) {
    CurveScale range{steps.target, steps.target, {}};
    widen(range, steps.last);
    for (const CurveStep& step : steps.steps) {
        widen(range, step.bpm);
        widen(range, step.markBpm);
    }
    return scaleBetween(range.low, range.high, mostTicks);
}

} // namespace piolo::plots
