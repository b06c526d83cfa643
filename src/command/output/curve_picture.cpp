// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/curve_picture.h"

#include "command/output/drawing_application.h"
#include "plots/curve/curves_plot.h"
#include "plots/plot_file.h"

#include <QStringList>

namespace piolo::command {

namespace {

plots::Drawing drawingOf(const PassageRecord& record, const CurvePicture& picture) {
    return [&](QPainter& painter) {
        plots::drawTempoCurve(painter, picture.size, record, picture.view, plots::lightCurveStyle());
    };
}

std::string bytesOf(PictureKind kind, QSize size, const QString& title, const plots::Drawing& drawing) {
    switch (kind) {
    case PictureKind::svg:
        return plots::svgBytes(size, title, drawing).toStdString();
    case PictureKind::pdf:
        return plots::pdfBytes(size, title, drawing).toStdString();
    case PictureKind::png:
        break;
    }
    return plots::pngBytes(size, 1, drawing).toStdString();
}

} // namespace

std::string curveBytes(PictureKind kind, const PassageRecord& record, const CurvePicture& picture) {
    const DrawingApplication application;
    const QString title = QString::fromStdString(record.passage.title.name);
    return bytesOf(kind, picture.size, title, drawingOf(record, picture));
}

std::string curvePng(const PassageRecord& record, const CurvePicture& picture, int scale) {
    const DrawingApplication application;
    return plots::pngBytes(picture.size, scale, drawingOf(record, picture)).toStdString();
}

std::string curvesBytes(PictureKind kind, const std::vector<plots::CurveSeries>& series,
                        const CurvePicture& picture) {
    const DrawingApplication application;
    const plots::CurveStyle style = plots::lightCurveStyle();
    QStringList names;
    for (const plots::CurveSeries& one : series) names << one.name;
    const plots::CurvesView view = plots::wholeView(series, picture.view.today);
    const plots::CurvesLayout layout = plots::layOutCurves(series, view, picture.size, style);
    return bytesOf(kind, picture.size, names.join(QStringLiteral("; ")),
                   [&](QPainter& painter) { plots::drawCurves(painter, picture.size, layout, style); });
}

} // namespace piolo::command
