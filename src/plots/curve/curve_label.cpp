// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_label.h"

#include <QPainter>

namespace piolo::plots {

QColor withAlpha(QColor colour, double alpha) {
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

void drawLabel(QPainter& painter, const CurveLabel& label, int flags) {
    // The box is slightly wider than its text, so that rounding does not wrap the line.
    painter.drawText(label.box.adjusted(-2, 0, 2, 0), flags, label.text);
}

} // namespace piolo::plots
