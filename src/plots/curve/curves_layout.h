// SPDX-License-Identifier: GPL-3.0-or-later
// The geometry of several tempo curves in one picture, before anything is drawn.
#pragma once

#include "plots/curve/curve_layout.h"
#include "plots/curve/curve_series.h"

#include <optional>
#include <span>

namespace piolo::plots {

/// The visible part of the x axis; from < to. In days since 1970, or in runs counted from 0.
struct CurvesView {
    double from = 0;
    double to = 1;
    bool operator==(const CurvesView&) const = default;
};

/// The curve of one passage.
struct CurvesLine {
    QPolygonF path;               ///< at most four points per pixel column
    std::vector<CurveMark> marks; ///< misses and tries; marks that would hide each other are drawn once
    std::vector<QPointF> secures; ///< the centres of the diamonds
    std::optional<QPointF> end;   ///< the last visible point
    CurveLabel label;             ///< the passage's name, beside the end of its line; elided if too long
    QLineF target;                ///< across the frame for a single passage, otherwise a short line at its
                                  ///< edge; null if it is far from what was played
};

/// All lengths are in device-independent pixels, measured from the picture's top left corner.
struct CurvesLayout {
    double textPixels = 12;
    double markSize = 8;
    QRectF frame;
    CurvesView view;
    CurveScale scale;
    std::vector<CurvesLine> lines; ///< one for each series, in their order
    std::vector<QLineF> grid;
    std::vector<CurveLabel> tempi;
    std::vector<CurveLabel> places; ///< dates or run numbers below the frame
    std::vector<QLineF> dues;
    std::vector<CurveLabel> dueLabels; ///< above the frame; the last may be that of a date to the right of it
    CurveLabel targetLabel;            ///< for a single passage only

    [[nodiscard]] QPointF at(const SeriesPoint& point) const;
};

/// The whole range: from the first point to the last and, by days, on to `today` and to due dates if they
/// are near, compared with that.
[[nodiscard]] CurvesView wholeView(std::span<const CurveSeries> series, Date today);
/// Lays out what is visible in the view. Reads no points outside it except one on either side.
[[nodiscard]] CurvesLayout layOutCurves(std::span<const CurveSeries> series, const CurvesView& view,
                                        QSizeF size, const CurveStyle& style);

/// A point of a series.
struct CurvesPoint {
    std::size_t series = 0;
    std::size_t point = 0;
    bool operator==(const CurvesPoint&) const = default;
};
/// The visible point nearest to `where`, at most `reach` pixels to the left or right of it.
[[nodiscard]] std::optional<CurvesPoint> pointNear(std::span<const CurveSeries> series,
                                                   const CurvesLayout& layout, QPointF where, double reach);

} // namespace piolo::plots
