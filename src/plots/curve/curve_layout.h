// SPDX-License-Identifier: GPL-3.0-or-later
// The geometry of a tempo curve: where everything goes, before anything is drawn.
#pragma once

#include "plots/curve/curve_scale.h"

#include <QLineF>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <vector>

namespace piolo::plots {

/// A piece of text and its position. No two labels of a layout overlap.
struct CurveLabel {
    QRectF box;
    QString text;
};

struct CurveMark {
    QPointF at; ///< the tip of a miss, the centre of a try
    StepMark kind = StepMark::miss;
};

/// All lengths are in device-independent pixels, measured from the picture's top left corner.
struct CurveLayout {
    double textPixels = 12;
    double markSize = 8;
    double lineWidth = 2;           ///< thinner where runs are dense
    QRectF frame;                   ///< where the curve is
    QPolygonF line;                 ///< at most four points per pixel column
    std::vector<CurveMark> marks;   ///< marks that would hide each other are drawn once
    std::vector<QLineF> grid;       ///< at round numbers
    std::vector<CurveLabel> tempi;  ///< beside the grid
    std::vector<QLineF> separators; ///< between days
    std::vector<CurveLabel> dates;  ///< below the days, as many as fit
    QLineF target;
    CurveLabel targetLabel;
};

/// The text size for a picture of that size: 11 on a small card, about 20 on a page.
[[nodiscard]] double textPixelsFor(QSizeF size);
/// The font of a picture, `textPixels` high.
[[nodiscard]] QFont curveFont(const CurveStyle& style, double textPixels);
/// `steps` must contain at least one step.
[[nodiscard]] CurveLayout layOut(const CurveSteps& steps, QSizeF size, const CurveStyle& style);

} // namespace piolo::plots
