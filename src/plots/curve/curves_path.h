// SPDX-License-Identifier: GPL-3.0-or-later
// One of several tempo curves in its place: its line and its marks, thinned to what the eye can tell apart.
#pragma once

#include "plots/curve/curves_layout.h"

namespace piolo::plots {

/// By days from point to point; by runs level at each run's tempo, upright between runs. Where points are
/// closer than a pixel each column keeps its first, lowest, highest and last.
[[nodiscard]] QPolygonF sheetPath(const CurveSeries& series, PointRange seen, const SheetLayout& layout);
/// Misses, tries and secures of the points inside the frame, into `line`.
void addSheetMarks(const CurveSeries& series, PointRange seen, const SheetLayout& layout, SheetLine& line);

} // namespace piolo::plots
