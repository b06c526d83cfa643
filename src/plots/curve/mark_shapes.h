// SPDX-License-Identifier: GPL-3.0-or-later
// The shapes that stand on a curve: told apart without their colours.
#pragma once

#include "plots/curve/curve_layout.h"

class QPainter;

namespace piolo::plots {

/// A triangle that points down at a miss; a try is an open circle, or an open triangle when missed.
void drawMark(QPainter& painter, const CurveMark& mark, double size, const CurveStyle& style);
/// A filled diamond: secure.
void drawDiamond(QPainter& painter, QPointF middle, double size, const CurveStyle& style);

} // namespace piolo::plots
