// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's tempo as one line among others: over its runs, or over the days.
#pragma once

#include "core/history/notebook.h"
#include "plots/curve/curve_steps.h"

#include <QString>

#include <optional>
#include <vector>

namespace piolo::plots {

enum class CurveBy : std::uint8_t { runs, days };

struct SeriesPoint {
    double x = 0;   ///< the run's number from 0, or the days since 1970
    double bpm = 0; ///< of the run, or where the tempo stood at the end of the day
    /// By runs: a miss, or a try. By days: a miss when runs were played and none was clean.
    StepMark mark = StepMark::none;
    bool secure = false; ///< a full streak at the target as it is now
    Date date;
    std::int32_t runs = 0; ///< clean and missed
    std::int32_t clean = 0;
};

struct CurveSeries {
    Id passage;
    QString name;
    std::vector<SeriesPoint> points; ///< x ascends
    double target = 0;
    std::optional<Date> due;
    CurveBy by = CurveBy::days;
};

/// Void runs are no points; a try stands at the tempo that it left alone. `name` and `due` are the caller's.
[[nodiscard]] CurveSeries seriesOf(const PassageRecord& record, CurveBy by);

/// The points of the series whose x lies in from … to, and one more on either side where there is one.
struct PointRange {
    std::size_t first = 0;
    std::size_t end = 0;
};
[[nodiscard]] PointRange pointsBetween(const CurveSeries& series, double from, double to);

} // namespace piolo::plots
