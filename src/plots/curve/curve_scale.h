// SPDX-License-Identifier: GPL-3.0-or-later
// The vertical axis of a tempo curve: its range and its round numbers.
#pragma once

#include "plots/curve/curve_steps.h"

#include <vector>

namespace piolo::plots {

/// Tempi in BPM. The range spans at least 10 BPM, so that a single step of the rule never fills the picture.
struct CurveScale {
    double low = 0;
    double high = 0;
    std::vector<double> ticks; ///< round numbers from low to high: steps of 1, 2, 5, 10, 20, 50 …
};

/// A scale that includes both tempi, with at most `mostTicks` (2 or more) numbers.
[[nodiscard]] CurveScale scaleBetween(double low, double high, int mostTicks);
/// The same for a single curve: it includes every step, every mark and the target.
[[nodiscard]] CurveScale scaleOf(const CurveSteps& steps, int mostTicks);

} // namespace piolo::plots
