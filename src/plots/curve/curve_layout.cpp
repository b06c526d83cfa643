// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_layout.h"

#include "plots/curve/curve_path.h"

#include <QDate>
#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>

namespace piolo::plots {

namespace {

constexpr int mostTempoTicks = 7;

QString numberText(double bpm) { return QString::number(bpm, 'g', 6); }

int ticksFor(double height, double textPixels) {
    return std::clamp(static_cast<int>(height / (2.6 * textPixels)), 2, mostTempoTicks);
}

QRectF frameFor(QSizeF size, double text, double numberWidth) {
    const double left = std::ceil(numberWidth + 1.1 * text);
    const double top = std::ceil(2.0 * text);
    const QRectF all({0, 0}, size);
    return all.adjusted(left, top, -std::ceil(0.9 * text), -std::ceil(2.2 * text));
}

void addGrid(CurveLayout& made, const CurveMapping& mapping, const QFontMetricsF& metrics) {
    const double height = metrics.height();
    for (const double tick : mapping.scale.ticks) {
        const double y = mapping.yOf(tick);
        // The target line already shows this number.
        if (std::abs(y - made.target.y1()) > 0.55 * made.textPixels)
            made.grid.emplace_back(made.frame.left(), y, made.frame.right(), y);
        const QString text = numberText(tick);
        const double width = metrics.horizontalAdvance(text);
        made.tempi.push_back(
            {QRectF(made.frame.left() - 0.6 * made.textPixels - width, y - height / 2, width, height), text});
    }
}

CurveLabel dateLabel(const CurveDay& day, const CurveLayout& made, const CurveMapping& mapping,
                     const CurveStyle& style, const QFontMetricsF& metrics) {
    const QDate date(day.date.year, day.date.month, day.date.day);
    const QString text = style.locale.toString(date, QStringLiteral("d MMM"));
    const double width = metrics.horizontalAdvance(text);
    const double middle = mapping.xOf(static_cast<double>(day.first) + static_cast<double>(day.count) / 2);
    const double most = std::max(made.frame.left(), made.frame.right() - width);
    const double left = std::clamp(middle - width / 2, made.frame.left(), most);
    return {QRectF(left, made.frame.bottom() + 0.7 * made.textPixels, width, metrics.height()), text};
}

/// The newest day always gets a label; earlier days get one while there is room.
void addDays(CurveLayout& made, const CurveSteps& steps, const CurveMapping& mapping, const CurveStyle& style,
             const QFontMetricsF& metrics) {
    const double dayWidth = made.frame.width() / static_cast<double>(steps.days.size());
    const bool roomForAll = dayWidth >= 0.5 * made.textPixels;
    for (std::size_t i = steps.days.size(); i-- > 0;) {
        CurveLabel label = dateLabel(steps.days[i], made, mapping, style, metrics);
        const bool fits =
            made.dates.empty() || label.box.right() + made.textPixels < made.dates.back().box.left();
        if (fits) made.dates.push_back(std::move(label));
        if (i == 0 || !(fits || roomForAll)) continue;
        const double x = std::floor(mapping.xOf(static_cast<double>(steps.days[i].first))) + 0.5;
        made.separators.emplace_back(x, made.frame.top(), x, made.frame.bottom());
    }
}

bool covers(const CurveLayout& made, const QRectF& box) {
    const QRectF room = box.adjusted(-2, -2, 2, 2);
    const double size = made.markSize;
    const bool marked = std::any_of(made.marks.begin(), made.marks.end(), [&](const CurveMark& mark) {
        return room.intersects(QRectF(mark.at.x() - size / 2, mark.at.y() - size, size, 2 * size));
    });
    if (marked) return true;
    for (int i = 1; i < made.line.size(); ++i) {
        const QRectF piece = QRectF(made.line[i - 1], made.line[i]).normalized().adjusted(-1, -1, 1, 1);
        if (room.intersects(piece)) return true;
    }
    return false;
}

/// Above the line at the right if that space is free; otherwise above at the left, below, or in the middle.
void placeTargetLabel(CurveLayout& made, const CurveSteps& steps, const CurveStyle& style,
                      const QFontMetricsF& metrics) {
    const QString text = style.targetWord + QLatin1Char(' ') + numberText(steps.target);
    const QSizeF size(metrics.horizontalAdvance(text), metrics.height());
    const double above = made.target.y1() - size.height() - 0.2 * made.textPixels;
    const double below = made.target.y1() + 0.2 * made.textPixels;
    const double right = made.frame.right() - size.width();
    const double left = made.frame.left() + 0.4 * made.textPixels;
    const double middle = (left + right) / 2;
    const std::array places{QPointF(right, above), QPointF(left, above), QPointF(middle, above),
                            QPointF(right, below), QPointF(left, below)};
    const auto* free = std::find_if(places.begin(), places.end(), [&](QPointF place) {
        return !covers(made, QRectF(place, size)) && place.y() + size.height() < made.frame.bottom();
    });
    made.targetLabel = {QRectF(free == places.end() ? places.front() : *free, size), text};
}

} // namespace

double textPixelsFor(QSizeF size) {
    const double side = std::sqrt(std::max(0.0, size.width() * size.height()));
    return std::clamp(std::round(11 + (side - 240) * 0.0145), 9.0, 24.0);
}

QFont curveFont(const CurveStyle& style, double textPixels) {
    QFont font = style.font;
    font.setPixelSize(static_cast<int>(textPixels));
    return font;
}

CurveLayout layOut(const CurveSteps& steps, QSizeF size, const CurveStyle& style) {
    CurveLayout made;
    made.textPixels = textPixelsFor(size);
    const QFontMetricsF metrics(curveFont(style, made.textPixels));
    const int ticks = ticksFor(size.height() - 4.2 * made.textPixels, made.textPixels);
    CurveMapping mapping{{}, scaleOf(steps, ticks), 1};
    made.frame =
        frameFor(size, made.textPixels, metrics.horizontalAdvance(numberText(mapping.scale.ticks.back())));
    mapping.frame = made.frame;
    mapping.stepWidth =
        std::min(2.2 * made.textPixels, made.frame.width() / static_cast<double>(steps.steps.size()));
    made.markSize = std::clamp(0.9 * mapping.stepWidth, 0.55 * made.textPixels, 0.8 * made.textPixels);
    made.lineWidth = std::clamp(0.9 * mapping.stepWidth, 1.0, std::max(1.6, made.textPixels / 6));
    const double targetY = mapping.yOf(steps.target);
    made.target = QLineF(made.frame.left(), targetY, made.frame.right(), targetY);
    made.line = pathOf(steps, mapping);
    made.marks = marksOf(steps, mapping, made.markSize);
    addGrid(made, mapping, metrics);
    addDays(made, steps, mapping, style, metrics);
    placeTargetLabel(made, steps, style, metrics);
    return made;
}

} // namespace piolo::plots
