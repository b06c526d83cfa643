// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawings/curve_picture.h"

#include "drawings/drawing_application.h"
#include "plots/curve/curve_csv.h"
#include "plots/curve/curves_plot.h"
#include "plots/curve/passage_curves.h"
#include "plots/picture_bytes.h"
#include "text/one_line.h"

#include <QStringList>

#include <algorithm>

namespace piolo::drawings {

namespace {

using Records = std::vector<const PassageRecord*>;

Records recordsOf(const Notebook& notebook, const std::vector<Id>& passages) {
    Records records;
    for (const Id& id : passages) records.push_back(notebook.passage(id));
    return records;
}

Date newestDayOf(const Records& records) {
    Date newest;
    for (const PassageRecord* const record : records)
        newest = std::max(newest, record->lastDay.value_or(Date{}));
    return newest;
}

plots::Drawing drawingOf(const PassageRecord& record, QSize size, const plots::CurveView& view) {
    return [&record, size, view](QPainter& painter) {
        plots::drawTempoCurve(painter, size, record, view, plots::lightCurveStyle());
    };
}

std::string picturedAsDrilled(plots::PictureKind kind, const PassageRecord& record, QSize size, Date today) {
    const QString title = text::onOneLine(record.passage.title.name);
    return plots::pictureBytes(kind, size, title, 1, drawingOf(record, size, {today, 0}));
}

/// As on the log screen.
std::string picturedTogether(plots::PictureKind kind, const std::vector<plots::CurveSeries>& series,
                             QSize size, Date today) {
    const plots::CurveStyle style = plots::lightCurveStyle();
    QStringList names;
    for (const plots::CurveSeries& one : series) names << one.name;
    const plots::CurvesView view = plots::wholeView(series, today);
    const plots::CurvesLayout layout = plots::layOutCurves(series, view, size, style);
    return plots::pictureBytes(kind, size, names.join(QStringLiteral("; ")), 1,
                               [&](QPainter& painter) { plots::drawCurves(painter, size, layout, style); });
}

} // namespace

std::string curveFile(const Notebook& notebook, const std::vector<Id>& passages,
                      const CurveRequest& request) {
    const Records records = recordsOf(notebook, passages);
    if (!request.kind) return plots::curveCsv(records);
    const DrawingApplication application; // also for the names of scales, which are texts
    const Date today = newestDayOf(records);
    if (records.size() == 1 && !request.by)
        return picturedAsDrilled(*request.kind, *records.front(), request.size, today);
    const auto by = request.by.value_or(plots::CurveBy::runs);
    return picturedTogether(*request.kind, plots::curvesOf(notebook, passages, by), request.size, today);
}

std::string curvePng(const PassageRecord& record, QSize size, const plots::CurveView& view, int scale) {
    const DrawingApplication application;
    return plots::pictureBytes(plots::PictureKind::png, size, {}, scale, drawingOf(record, size, view));
}

} // namespace piolo::drawings
