// SPDX-License-Identifier: GPL-3.0-or-later
#include "recorder.h"

#include <QFont>

namespace piolo::plots {

class Recorder::Engine final : public QPaintEngine {
public:
    Engine() : QPaintEngine(AllFeatures) {}
    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    [[nodiscard]] Type type() const override { return User; }
    void updateState(const QPaintEngineState& now) override {
        if (now.state().testFlag(DirtyPen)) pen_ = now.pen().style();
    }
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawLines(const QLineF* lines, int count) override {
        for (int i = 0; i < count; ++i) shapes.lines.push_back({lines[i], pen_});
    }
    void drawRects(const QRectF*, int) override {}
    void drawEllipse(const QRectF& rect) override { shapes.ellipses.push_back(rect); }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
        QPolygonF polygon;
        for (int i = 0; i < count; ++i) polygon << points[i];
        (mode == PolylineMode ? shapes.polylines : shapes.polygons).push_back(polygon);
    }
    void drawTextItem(const QPointF&, const QTextItem& item) override { shapes.words << item.text(); }

    Shapes shapes;

private:
    Qt::PenStyle pen_ = Qt::SolidLine;
};

Recorder::Recorder(QSize size) : size_(size), engine_(std::make_unique<Engine>()) {}
Recorder::~Recorder() = default;
QPaintEngine* Recorder::paintEngine() const { return engine_.get(); }
const Shapes& Recorder::shapes() const { return engine_->shapes; }

int Recorder::metric(PaintDeviceMetric metric) const {
    switch (metric) {
    case PdmWidth:
        return size_.width();
    case PdmHeight:
        return size_.height();
    case PdmDevicePixelRatio:
        return 1;
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
        return 96;
    default:
        return QPaintDevice::metric(metric);
    }
}

} // namespace piolo::plots
