// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curves_ticks.h"

#include <QDate>

#include <algorithm>
#include <array>
#include <cmath>

namespace piolo::plots {

namespace {

double daysApart(double span, int most) {
    constexpr std::array<double, 9> steps{1, 2, 7, 14, 28, 91, 182, 365, 730};
    const auto* found =
        std::find_if(steps.begin(), steps.end(), [&](double step) { return span / step < most; });
    return found != steps.end() ? *found : std::ceil(span / most / 365) * 365;
}

double runsApart(double span, int most) {
    double step = 1;
    while (span / step >= most)
        for (const double factor : {2.0, 2.5, 2.0})
            if (span / step >= most) step *= factor;
    return std::ceil(step);
}

std::vector<CurvesTick> dateTicks(double from, double to, int most, const QLocale& locale) {
    std::vector<CurvesTick> ticks;
    const double apart = daysApart(to - from, most);
    const auto dateOf = [](double x) {
        const Date date = Date::fromDaysSince1970(static_cast<std::int64_t>(x));
        return QDate(date.year, date.month, date.day);
    };
    const bool years = dateOf(std::ceil(from)).year() != dateOf(std::floor(to)).year();
    const QString format = years ? QStringLiteral("d MMM yyyy") : QStringLiteral("d MMM");
    for (double x = std::floor(to); x >= from; x -= apart)
        ticks.push_back({x, locale.toString(dateOf(x), format)});
    std::reverse(ticks.begin(), ticks.end());
    return ticks;
}

std::vector<CurvesTick> runTicks(double from, double to, int most, const QLocale& locale) {
    std::vector<CurvesTick> ticks;
    const double apart = runsApart(to - from, most);
    for (double number = std::max(apart, std::ceil((from + 1) / apart) * apart); number <= to + 1;
         number += apart)
        ticks.push_back({number - 1, locale.toString(static_cast<qlonglong>(number))});
    return ticks;
}

} // namespace

std::vector<CurvesTick> curvesTicks(CurveBy by, double from, double to, int most, const QLocale& locale) {
    const int count = std::max(most, 2);
    return by == CurveBy::days ? dateTicks(from, to, count, locale) : runTicks(from, to, count, locale);
}

} // namespace piolo::plots
