// SPDX-License-Identifier: GPL-3.0-or-later
// Targets and due dates in a picture of several curves: in their place, or at its edge if they are far away.
#pragma once

#include "plots/curve/curves_layout.h"

#include <QFontMetricsF>

#include <span>

namespace piolo::plots {

/// The top of a scale for tempi from `low` to `high`: each target that leaves what was played at least a
/// third of the height, or is at most 40 BPM above it, is included.
[[nodiscard]] double topWithTargets(std::span<const double> targets, double low, double high);
/// The end of an axis by days for what was played between these days: `today` and each due date are included
/// if that leaves what was played three quarters of the width, or adds at most three days.
[[nodiscard]] double endWithGoals(std::span<const CurveSeries> series, Date today, double from, double to);

/// The line of a target that is inside the scale. `alone`: across the frame.
void addTarget(const CurvesLayout& made, CurvesLine& line, double target, bool alone);
/// Names the only target: above its line, or at the edge, with an arrow.
void nameTarget(CurvesLayout& made, double target, const CurveStyle& style, const QFontMetricsF& metrics);
/// A line for each visible due date. The next one after what is visible is named at the right edge, with its
/// date and an arrow.
void addDues(CurvesLayout& made, std::span<const CurveSeries> series, const CurveStyle& style,
             const QFontMetricsF& metrics);

} // namespace piolo::plots
