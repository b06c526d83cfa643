// SPDX-License-Identifier: GPL-3.0-or-later
// The labels of tempo curves, and the fainter colours of their grids.
#pragma once

#include "plots/curve/curve_layout.h"

#include <QColor>

class QPainter;

namespace piolo::plots {

[[nodiscard]] QColor withAlpha(QColor colour, double alpha);
/// `flags`: Qt's alignment flags.
void drawLabel(QPainter& painter, const CurveLabel& label, int flags = Qt::AlignCenter);

} // namespace piolo::plots
