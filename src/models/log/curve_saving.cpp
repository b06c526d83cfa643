// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/curve_saving.h"

#include "models/files/file_kind.h"
#include "models/text/typed_file.h"
#include "plots/curve/curve_csv.h"
#include "plots/picture_bytes.h"
#include "practice/faults/fault_text.h"

#include <QPainter>
#include <QStringList>

#include <array>
#include <string>

namespace piolo::models {

namespace {

constexpr int pixelsPerUnit = 2; // of a PNG

struct Ending {
    QLatin1String text;
    plots::PictureKind kind;
};
constexpr std::array endings{Ending{QLatin1String(".svg"), plots::PictureKind::svg},
                             Ending{QLatin1String(".png"), plots::PictureKind::png},
                             Ending{QLatin1String(".pdf"), plots::PictureKind::pdf}};

std::string pictureOf(plots::PictureKind kind, const SavedCurves& saved) {
    const plots::CurveStyle style = plots::lightCurveStyle();
    const plots::Drawing drawing = [&](QPainter& painter) {
        plots::drawCurves(painter, saved.size,
                          plots::layOutCurves(saved.series, saved.view, saved.size, style), style);
    };
    QStringList names;
    for (const plots::CurveSeries& series : saved.series) names << series.name;
    return plots::pictureBytes(kind, saved.size, names.join(QStringLiteral("; ")), pixelsPerUnit, drawing);
}

std::string bytesOf(const QString& path, const SavedCurves& saved) {
    if (path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)) return plots::curveCsv(saved.records);
    for (const Ending& ending : endings)
        if (path.endsWith(ending.text, Qt::CaseInsensitive)) return pictureOf(ending.kind, saved);
    return {};
}

} // namespace

QString saveCurves(const QString& typed, const SavedCurves& saved) {
    const QString path = typedPath(typed, usualEnding(FileKind::curves));
    const std::string bytes = bytesOf(path, saved);
    if (bytes.empty())
        return practice::faultSentence(
            {FaultNumber::badFileKind, {}, {path.toStdString(), ".svg, .png, .pdf or .csv"}});
    return saveBytes(path, QByteArray::fromStdString(bytes));
}

} // namespace piolo::models
