// SPDX-License-Identifier: GPL-3.0-or-later
// The marks on a curve, distinguishable without colour.
#pragma once

#include "plots/curve/curve_layout.h"

class QPainter;

namespace piolo::plots {

/// A miss is a triangle that points down; a try is an open circle, or an open triangle if missed.
void drawMark(QPainter& painter, const CurveMark& mark, double size, const CurveStyle& style);
/// A filled diamond: secure.
void drawDiamond(QPainter& painter, QPointF middle, double size, const CurveStyle& style);

} // namespace piolo::plots
