// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/curve_saving.h"

#include "models/text/typed_file.h"
#include "plots/curve/curve_csv.h"
#include "plots/plot_file.h"
#include "practice/faults/fault_text.h"

#include <QPainter>
#include <QStringList>

namespace piolo::models {

namespace {

QByteArray bytesOf(const QString& path, const SavedCurves& saved) {
    const plots::CurveStyle style = plots::lightCurveStyle();
    const plots::Drawing drawing = [&](QPainter& painter) {
        plots::drawCurves(painter, saved.size,
                          plots::layOutCurves(saved.series, saved.view, saved.size, style), style);
    };
    const auto ends = [&](const char* kind) {
        return path.endsWith(QLatin1String(kind), Qt::CaseInsensitive);
    };
    QStringList names;
    for (const plots::CurveSeries& series : saved.series) names << series.name;
    const QString title = names.join(QStringLiteral("; "));
    if (ends(".csv")) return QByteArray::fromStdString(plots::curveCsv(saved.records));
    if (ends(".png")) return plots::pngBytes(saved.size, 2, drawing);
    if (ends(".pdf")) return plots::pdfBytes(saved.size, title, drawing);
    return ends(".svg") ? plots::svgBytes(saved.size, title, drawing) : QByteArray();
}

} // namespace

QString saveCurves(const QString& typed, const SavedCurves& saved) {
    const QString path = typedPath(typed, QStringLiteral(".svg"));
    const QByteArray bytes = bytesOf(path, saved);
    if (bytes.isEmpty())
        return practice::faultSentence(
            {FaultNumber::badFileKind, {}, {path.toStdString(), ".svg, .png, .pdf or .csv"}});
    return saveBytes(path, bytes);
}

} // namespace piolo::models
