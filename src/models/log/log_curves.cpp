// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_curves.h"

#include "models/text/formatter.h"

#include <QLocale>
#include <QStringList>
#include <QtGlobal>

#include <algorithm>
#include <cmath>

namespace piolo::models {

namespace {

QString tempoOf(double bpm) { return Formatter::tempo(static_cast<int>(std::lround(bpm * 1000))); }

QString outcomeWords(const plots::SeriesPoint& point, plots::CurveBy by) {
    if (point.secure) return qtTrId("curve.point.secure");
    if (by == plots::CurveBy::days)
        return qtTrId("curve.point.of-clean")
            .arg(QLocale().toString(point.clean), QLocale().toString(point.runs));
    switch (point.mark) {
    case plots::StepMark::miss:
        return qtTrId("curve.point.missed");
    case plots::StepMark::cleanTry:
        return qtTrId("curve.point.clean-try");
    case plots::StepMark::missedTry:
        return qtTrId("curve.point.missed-try");
    case plots::StepMark::none:
        break;
    }
    return qtTrId("curve.point.clean");
}

} // namespace

QString pointWords(const plots::CurveSeries& series, std::size_t index, Date today) {
    const plots::SeriesPoint& point = series.points[index];
    const QString outcome = outcomeWords(point, series.by);
    if (series.by == plots::CurveBy::days)
        return qtTrId("curve.point.day")
            .arg(series.name, Formatter::weekday(point.date, today), tempoOf(point.bpm), outcome);
    return qtTrId("curve.point.run")
        .arg(series.name, QLocale().toString(static_cast<qulonglong>(index + 1)),
             Formatter::date(point.date, today), tempoOf(point.bpm), outcome);
}

QString curveWords(const std::vector<plots::CurveSeries>& curves) {
    QStringList all;
    for (const plots::CurveSeries& series : curves)
        all << qtTrId("curve.point.heard")
                   .arg(series.name, tempoOf(series.points.back().bpm), tempoOf(series.target));
    return all.join(QStringLiteral("; "));
}

} // namespace piolo::models
