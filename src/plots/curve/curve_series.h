// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's tempo as one line among several, by run or by day.
#pragma once

#include "core/history/notebook.h"
#include "plots/curve/curve_steps.h"

#include <QString>

#include <optional>
#include <vector>

namespace piolo::plots {

enum class CurveBy : std::uint8_t { runs, days };

struct SeriesPoint {
    double x = 0;   ///< the run's number, counted from 0, or the days since 1970
    double bpm = 0; ///< of the run, or the tempo at the end of the day
    /// By runs: a miss or a try. By days: a miss if runs were played and none was clean.
    StepMark mark = StepMark::none;
    bool secure = false; ///< a full streak at the current target
    Date date;
    std::int32_t runs = 0; ///< clean and missed
    std::int32_t clean = 0;
};

struct CurveSeries {
    Id passage;
    QString name;
    std::vector<SeriesPoint> points; ///< in ascending order of x
    double target = 0;
    std::optional<Date> due;
    CurveBy by = CurveBy::days;
};

/// Void runs have no point; a try is placed at the rule's tempo, which it does not change. The caller fills
/// in `name` and `due`.
[[nodiscard]] CurveSeries seriesOf(const PassageRecord& record, CurveBy by);

/// The points whose x is in from … to, plus one more on either side if there is one.
struct PointRange {
    std::size_t first = 0;
    std::size_t end = 0;
};
[[nodiscard]] PointRange pointsBetween(const CurveSeries& series, double from, double to);

} // namespace piolo::plots
