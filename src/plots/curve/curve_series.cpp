// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_series.h"

#include <algorithm>

namespace piolo::plots {

namespace {

bool isPlayed(const Entry& entry) { return entry.kind != Entry::Kind::tempo && entry.mark != Mark::voided; }

bool isSecure(const Entry& entry, const PassageRecord& record) {
    return entry.fullStreak && entry.tempo >= record.passage.tempi.rule.target;
}

StepMark markOf(const Entry& entry) {
    const bool missed = entry.mark == Mark::missed;
    if (entry.kind == Entry::Kind::attempt) return missed ? StepMark::missedTry : StepMark::cleanTry;
    return missed && entry.kind == Entry::Kind::run ? StepMark::miss : StepMark::none;
}

SeriesPoint runPoint(const Entry& entry, const PassageRecord& record, double x) {
    SeriesPoint point;
    point.x = x;
    point.bpm = bpmOf(entry.kind == Entry::Kind::run ? entry.tempo : entry.after.tempo);
    point.mark = markOf(entry);
    point.secure = isSecure(entry, record);
    point.date = entry.at.date();
    point.runs = 1;
    point.clean = entry.mark == Mark::clean ? 1 : 0;
    return point;
}

void addToDay(SeriesPoint& day, const Entry& entry, const PassageRecord& record) {
    day.bpm = bpmOf(entry.after.tempo);
    if (!isPlayed(entry)) return;
    ++day.runs;
    day.clean += entry.mark == Mark::clean ? 1 : 0;
    day.secure = day.secure || isSecure(entry, record);
    day.mark = day.clean == 0 ? StepMark::miss : StepMark::none;
}

std::vector<SeriesPoint> byRuns(const PassageRecord& record) {
    std::vector<SeriesPoint> points;
    for (const Entry& entry : record.entries)
        if (isPlayed(entry)) points.push_back(runPoint(entry, record, static_cast<double>(points.size())));
    return points;
}

std::vector<SeriesPoint> byDays(const PassageRecord& record) {
    std::vector<SeriesPoint> points;
    for (const Entry& entry : record.entries) {
        const Date date = entry.at.date();
        if (points.empty() || points.back().date != date) {
            SeriesPoint day;
            day.date = date;
            day.x = static_cast<double>(date.daysSince1970());
            points.push_back(day);
        }
        addToDay(points.back(), entry, record);
    }
    std::erase_if(points, [](const SeriesPoint& day) { return day.runs == 0; });
    // Merging logs may bring in a day's entries after those of a later day.
    std::stable_sort(points.begin(), points.end(),
                     [](const SeriesPoint& a, const SeriesPoint& b) { return a.x < b.x; });
    return points;
}

} // namespace

CurveSeries seriesOf(const PassageRecord& record, CurveBy by) {
    CurveSeries series;
    series.passage = record.passage.id;
    series.points = by == CurveBy::runs ? byRuns(record) : byDays(record);
    series.target = bpmOf(record.passage.tempi.rule.target);
    series.by = by;
    return series;
}

PointRange pointsBetween(const CurveSeries& series, double from, double to) {
    const auto& points = series.points;
    const auto first = std::lower_bound(points.begin(), points.end(), from,
                                        [](const SeriesPoint& point, double x) { return point.x < x; });
    const auto end = std::upper_bound(first, points.end(), to,
                                      [](double x, const SeriesPoint& point) { return x < point.x; });
    const auto begin = static_cast<std::size_t>(first - points.begin());
    const auto past = static_cast<std::size_t>(end - points.begin());
    return {begin == 0 ? 0 : begin - 1, std::min(past + 1, points.size())};
}

} // namespace piolo::plots
