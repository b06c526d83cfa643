// SPDX-License-Identifier: GPL-3.0-or-later
// Tempo curves of several passages in one picture: the same on the screen, in a file, and in print.
#pragma once

#include "plots/curve/curves_layout.h"
#include "plots/curve/tempo_curve.h"

class QPainter;

namespace piolo::plots {

/// Draws the sheet into 0,0 … size: each line in a dash of its own with its name at its end, a triangle at a
/// miss, a diamond where the target is secure, targets and due dates dashed. `pointed` gets a ring. Needs a
/// QGuiApplication for its text; the same input gives the same picture.
void drawSheet(QPainter& painter, QSizeF size, const SheetLayout& layout, const CurveStyle& style,
               std::optional<QPointF> pointed = std::nullopt);

} // namespace piolo::plots
