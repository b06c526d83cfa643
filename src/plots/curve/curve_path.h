// SPDX-License-Identifier: GPL-3.0-or-later
// The line and the marks of a tempo curve, thinned to what the eye can distinguish.
#pragma once

#include "plots/curve/curve_layout.h"

namespace piolo::plots {

/// Maps steps to pixels.
struct CurveMapping {
    QRectF frame;
    CurveScale scale;
    double stepWidth = 1;

    [[nodiscard]] double xOf(double step) const { return frame.left() + step * stepWidth; }
    [[nodiscard]] double yOf(double bpm) const {
        return frame.bottom() - (bpm - scale.low) / (scale.high - scale.low) * frame.height();
    }
};

/// Horizontal at each step's tempo, vertical between steps. Where steps are narrower than a pixel, each
/// column keeps only its first, lowest, highest and last point.
[[nodiscard]] QPolygonF pathOf(const CurveSteps& steps, const CurveMapping& mapping);
/// A miss is drawn at the end of its step, a try in the middle of it.
[[nodiscard]] std::vector<CurveMark> marksOf(const CurveSteps& steps, const CurveMapping& mapping,
                                             double markSize);

} // namespace piolo::plots
