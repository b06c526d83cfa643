// SPDX-License-Identifier: GPL-3.0-or-later
// Tempo curves of several passages in one picture: the same on the screen, in a file and in print.
#pragma once

#include "plots/curve/curves_layout.h"
#include "plots/curve/tempo_curve.h"

class QPainter;

namespace piolo::plots {

/// Draws the curves into 0,0 … size. Each line has its own dash pattern and its name at its end; a triangle
/// is a miss, a diamond means secure, targets and due dates are dashed. `pointed` gets a ring. Text needs a
/// QGuiApplication. The same input gives the same picture.
void drawCurves(QPainter& painter, QSizeF size, const CurvesLayout& layout, const CurveStyle& style,
                std::optional<QPointF> pointed = std::nullopt);

} // namespace piolo::plots
