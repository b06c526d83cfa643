// SPDX-License-Identifier: GPL-3.0-or-later
// The round numbers or dates below several curves.
#pragma once

#include "plots/curve/curve_series.h"

#include <QLocale>

#include <vector>

namespace piolo::plots {

struct CurvesTick {
    double x = 0;
    QString text;
};

/// At most `most` (2 or more) ticks inside from … to. By days: dates a round number of days apart, counted
/// back from the last; they show the year if more than one year is visible. By runs: round numbers; the first
/// run is 1.
[[nodiscard]] std::vector<CurvesTick> curvesTicks(CurveBy by, double from, double to, int most,
                                                  const QLocale& locale);

} // namespace piolo::plots
