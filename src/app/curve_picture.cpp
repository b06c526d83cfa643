// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/curve_picture.h"

#include "plots/plot_file.h"

#include <QGuiApplication>

#include <optional>

namespace piolo::app {

namespace {

class DrawingApplication {
public:
    DrawingApplication() {
        if (QCoreApplication::instance() != nullptr) return;
        // Standard error holds faults alone, not Qt's remarks on a missing session.
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
        qputenv("QT_QPA_PLATFORM", "offscreen"); // draws without a display
        own_.emplace(count_, arguments_);
    }

private:
    int count_ = 1;
    char name_[6] = "piolo";
    char* arguments_[2] = {name_, nullptr};
    std::optional<QGuiApplication> own_;
};

plots::Drawing drawingOf(const PassageRecord& record, const CurvePicture& picture) {
    return [&](QPainter& painter) {
        plots::drawTempoCurve(painter, picture.size, record, picture.view, plots::lightCurveStyle());
    };
}

} // namespace

std::string curvePng(const PassageRecord& record, const CurvePicture& picture, int scale) {
    const DrawingApplication application;
    return plots::pngBytes(picture.size, scale, drawingOf(record, picture)).toStdString();
}

std::string curveSvg(const PassageRecord& record, const CurvePicture& picture) {
    const DrawingApplication application;
    const QString title = QString::fromStdString(record.passage.title.name);
    return plots::svgBytes(picture.size, title, drawingOf(record, picture)).toStdString();
}

} // namespace piolo::app
