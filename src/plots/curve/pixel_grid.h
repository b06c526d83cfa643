// SPDX-License-Identifier: GPL-3.0-or-later
// Thins a curve to what the eye can distinguish: the points of one pixel column, and the cells that already
// hold a mark.
#pragma once

#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace piolo::plots {

/// The points of one pixel column. Only the first, lowest, highest and last are kept.
struct PixelColumn {
    double x = 0;
    double first = 0, low = 0, high = 0, last = 0;

    static PixelColumn at(double x, double y) { return {x, y, y, y, y}; }
    void add(double y) {
        low = std::min(low, y);
        high = std::max(high, y);
        last = y;
    }
    void appendTo(QPolygonF& path) const {
        for (const double y : {first, low, high, last}) {
            const QPointF point(x, y);
            if (path.isEmpty() || path.back() != point) path << point;
        }
    }
};

/// Which cells already hold a mark. Marks closer than 0.7 of their size hide each other.
class MarkCells {
public:
    explicit MarkCells(double markSize) : cell_(0.7 * markSize) {}
    /// False if the cell at that position was already taken.
    bool take(QPointF at) {
        const auto cellOf = [this](double place) { return static_cast<int>(std::floor(place / cell_)); };
        return cells_.insert({cellOf(at.x()), cellOf(at.y())}).second;
    }

private:
    double cell_;
    std::set<std::pair<int, int>> cells_;
};

} // namespace piolo::plots
