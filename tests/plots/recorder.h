// SPDX-License-Identifier: GPL-3.0-or-later
// A paint device that records the shapes drawn on it.
#pragma once

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPolygonF>
#include <QStringList>

#include <memory>
#include <vector>

namespace piolo::plots {

struct DrawnLine {
    QLineF line;
    Qt::PenStyle style = Qt::SolidLine;
};

/// What was drawn, in order.
struct Shapes {
    std::vector<QPolygonF> polygons; ///< filled polygons
    std::vector<QPolygonF> polylines;
    std::vector<DrawnLine> lines;
    std::vector<QRectF> ellipses;
    QStringList words;
};

class Recorder final : public QPaintDevice {
public:
    explicit Recorder(QSize size);
    ~Recorder() override;
    [[nodiscard]] QPaintEngine* paintEngine() const override;
    [[nodiscard]] const Shapes& shapes() const;

protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override;

private:
    class Engine;
    QSize size_;
    std::unique_ptr<Engine> engine_;
};

} // namespace piolo::plots
