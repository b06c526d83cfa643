// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curves_goals.h"

#include <QDate>

#include <algorithm>
#include <cmath>
#include <optional>

namespace piolo::plots {

namespace {

/// A target up to so many BPM above what was played is always in its place.
constexpr double targetNear = 40;
constexpr double targetShare = 2; // of what was played: two thirds of the whole
constexpr double dueNearDays = 3;
constexpr double dueShare = 1.0 / 3; // of what was played: a quarter of the whole

double dayOf(Date date) { return static_cast<double>(date.daysSince1970()); }

CurveLabel dueLabel(const CurvesLayout& made, const QString& text, double middle,
                    const QFontMetricsF& metrics) {
    const double width = metrics.horizontalAdvance(text);
    const double left = std::min(middle - width / 2, made.frame.right() - width);
    return {QRectF(left, made.frame.top() - metrics.height(), width, metrics.height()), text};
}

void addDue(CurvesLayout& made, double day, const CurveStyle& style, const QFontMetricsF& metrics) {
    const double x = std::floor(made.at({day, 0, {}, {}, {}, 0, 0}).x()) + 0.5;
    const auto same = [x](const QLineF& due) { return due.x1() == x; };
    if (std::any_of(made.dues.begin(), made.dues.end(), same)) return;
    made.dues.emplace_back(x, made.frame.top(), x, made.frame.bottom());
    made.dueLabels.push_back(dueLabel(made, style.dueWord, x, metrics));
}

QString dateWords(Date date, const CurvesLayout& made, const CurveStyle& style) {
    const Date last = Date::fromDaysSince1970(static_cast<std::int64_t>(made.view.to));
    const QString format = date.year == last.year ? QStringLiteral("d MMM") : QStringLiteral("d MMM yyyy");
    return style.locale.toString(QDate(date.year, date.month, date.day), format);
}

/// Left out where it would cover the name of a visible one.
void addDueAtEdge(CurvesLayout& made, Date due, const CurveStyle& style, const QFontMetricsF& metrics) {
    const QString text = QStringLiteral("%1 %2 →").arg(style.dueWord, dateWords(due, made, style));
    CurveLabel label = dueLabel(made, text, made.frame.right(), metrics);
    const auto covers = [&](const CurveLabel& other) { return other.box.intersects(label.box); };
    if (std::none_of(made.dueLabels.begin(), made.dueLabels.end(), covers))
        made.dueLabels.push_back(std::move(label));
}

} // namespace

double topWithTargets(std::span<const double> targets, double low, double high) {
    const double reach = high + std::max((high - low) * targetShare, targetNear);
    double top = high;
    for (const double target : targets)
        if (target <= reach) top = std::max(top, target);
    return top;
}

double endWithGoals(std::span<const CurveSeries> series, Date today, double from, double to) {
    const double reach = to + std::max((to - from) * dueShare, dueNearDays);
    double end = to;
    const auto show = [&](double day) {
        if (day <= reach) end = std::max(end, day);
    };
    show(dayOf(today));
    for (const CurveSeries& one : series)
        if (one.due) show(dayOf(*one.due) + 1);
    return end;
}

void addTarget(const CurvesLayout& made, CurvesLine& line, double target, bool alone) {
    if (target < made.scale.low || target > made.scale.high) return;
    const double y = made.at({0, target, {}, {}, {}, 0, 0}).y();
    const double stroke = 1.4 * made.textPixels;
    line.target = QLineF(alone ? made.frame.left() : made.frame.right() - stroke, y, made.frame.right(), y);
}

void nameTarget(CurvesLayout& made, double target, const CurveStyle& style, const QFontMetricsF& metrics) {
    QString text = style.targetWord + QLatin1Char(' ') + QString::number(target, 'g', 6);
    const QLineF& line = made.lines.front().target;
    double top = line.y1() - metrics.height() - 1;
    if (target > made.scale.high) {
        text += QStringLiteral(" ↑");
        top = made.frame.top() + 1;
    } else if (target < made.scale.low) {
        text += QStringLiteral(" ↓");
        top = made.frame.bottom() - metrics.height() - 1;
    }
    made.targetLabel = {QRectF(made.frame.left() + 0.4 * made.textPixels, top,
                               metrics.horizontalAdvance(text), metrics.height()),
                        text};
}

void addDues(CurvesLayout& made, std::span<const CurveSeries> series, const CurveStyle& style,
             const QFontMetricsF& metrics) {
    std::optional<Date> next;
    for (const CurveSeries& one : series) {
        if (!one.due || one.by != CurveBy::days) continue;
        const double day = dayOf(*one.due);
        if (day > made.view.to)
            next = std::min(next.value_or(*one.due), *one.due);
        else if (day >= made.view.from)
            addDue(made, day, style, metrics);
    }
    if (next) addDueAtEdge(made, *next, style, metrics);
}

} // namespace piolo::plots
