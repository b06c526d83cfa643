// SPDX-License-Identifier: GPL-3.0-or-later
// One of several tempo curves in pixels: its line and its marks, thinned to what the eye can distinguish.
#pragma once

#include "plots/curve/curves_layout.h"

namespace piolo::plots {

/// By days, straight from point to point; by runs, horizontal at each run's tempo and vertical between runs.
/// Where points are closer than a pixel, each column keeps only its first, lowest, highest and last point.
[[nodiscard]] QPolygonF curvesPath(const CurveSeries& series, PointRange seen, const CurvesLayout& layout);
/// Adds the misses, tries and secure points inside the frame to `line`.
void addCurvesMarks(const CurveSeries& series, PointRange seen, const CurvesLayout& layout, CurvesLine& line);

} // namespace piolo::plots
