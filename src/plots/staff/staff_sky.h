// SPDX-License-Identifier: GPL-3.0-or-later
// What a system already contains, so that the next sign can go above or below it.
#pragma once

#include <QRectF>

#include <algorithm>
#include <vector>

namespace piolo::plots {

/// Boxes; y downward.
class StaffSky {
public:
    void add(const QRectF& box) {
        boxes_.push_back(box);
        all_ = all_.isNull() ? box : all_.united(box);
    }
    /// The highest and the lowest y taken between two x; `otherwise` if nothing reaches beyond it.
    [[nodiscard]] double top(double left, double right, double otherwise) const {
        for (const QRectF& box : boxes_)
            if (box.right() > left && box.left() < right) otherwise = std::min(otherwise, box.top());
        return otherwise;
    }
    [[nodiscard]] double bottom(double left, double right, double otherwise) const {
        for (const QRectF& box : boxes_)
            if (box.right() > left && box.left() < right) otherwise = std::max(otherwise, box.bottom());
        return otherwise;
    }
    [[nodiscard]] QRectF all() const { return all_; }

private:
    std::vector<QRectF> boxes_;
    QRectF all_;
};

} // namespace piolo::plots
