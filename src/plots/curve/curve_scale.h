// SPDX-License-Identifier: GPL-3.0-or-later
// The upright axis of a tempo curve: its range and its round numbers.
#pragma once

#include "plots/curve/curve_steps.h"

#include <vector>

namespace piolo::plots {

/// Tempi in BPM. At least ten BPM high, so that one step of the rule never fills the picture.
struct CurveScale {
    double low = 0;
    double high = 0;
    std::vector<double> ticks; ///< round numbers from low to high: steps of 1, 2, 5, 10, 20, 50 …
};

/// A scale that holds both tempi, with at most `mostTicks` (2 or more) numbers.
[[nodiscard]] CurveScale scaleBetween(double low, double high, int mostTicks);
/// The same for a single curve: it holds every step, mark and the target.
[[nodiscard]] CurveScale scaleOf(const CurveSteps& steps, int mostTicks);

} // namespace piolo::plots
