// SPDX-License-Identifier: GPL-3.0-or-later
// The geometry of several tempo curves on one sheet, before anything is drawn.
#pragma once

#include "plots/curve/curve_layout.h"
#include "plots/curve/curve_series.h"

#include <optional>
#include <span>

namespace piolo::plots {

/// The part of the x axis that is seen; from < to. In days since 1970, or in runs from 0.
struct SheetView {
    double from = 0;
    double to = 1;
    bool operator==(const SheetView&) const = default;
};

/// One passage on the sheet.
struct SheetLine {
    QPolygonF path;               ///< at most four points to a pixel column
    std::vector<CurveMark> marks; ///< misses and tries; those that would hide each other stand once
    std::vector<QPointF> secures; ///< the middles of the diamonds
    std::optional<QPointF> end;   ///< where the last seen point is
    CurveLabel label;             ///< the passage's name, beside its line's end; elided when too long
    QLineF target;                ///< across the sheet for a passage alone, else a stroke at its edge
};

/// All lengths in device-independent pixels from the picture's top left corner.
struct SheetLayout {
    double textPixels = 12;
    double markSize = 8;
    QRectF frame;
    SheetView view;
    CurveScale scale;
    std::vector<SheetLine> lines; ///< one for each series, in their order
    std::vector<QLineF> grid;
    std::vector<CurveLabel> tempi;
    std::vector<CurveLabel> places; ///< dates or run numbers below the frame
    std::vector<QLineF> dues;
    std::vector<CurveLabel> dueLabels;
    CurveLabel targetLabel; ///< of a passage alone

    [[nodiscard]] QPointF at(const SeriesPoint& point) const;
};

/// Everything there is: from the first point to the last, and by days on to `today` and to dates due soon.
[[nodiscard]] SheetView wholeView(std::span<const CurveSeries> series, Date today);
/// Lays out what is seen in the view; reads no point outside it but one on either side.
[[nodiscard]] SheetLayout layOutSheet(std::span<const CurveSeries> series, const SheetView& view, QSizeF size,
                                      const CurveStyle& style);

/// A point of a series.
struct SheetPlace {
    std::size_t series = 0;
    std::size_t point = 0;
    bool operator==(const SheetPlace&) const = default;
};
/// The seen point nearest to `where`, at most `reach` pixels away from it to the left or right.
[[nodiscard]] std::optional<SheetPlace> pointNear(std::span<const CurveSeries> series,
                                                  const SheetLayout& layout, QPointF where, double reach);

} // namespace piolo::plots
