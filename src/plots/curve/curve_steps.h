// SPDX-License-Identifier: GPL-3.0-or-later
// What a tempo curve shows, before any geometry: one step for each run, in the order played.
#pragma once

#include "core/history/notebook.h"
#include "plots/curve/tempo_curve.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace piolo::plots {

/// What stands beside a step.
enum class StepMark : std::uint8_t { none, miss, cleanTry, missedTry };

/// One run or try. Tempi in BPM.
struct CurveStep {
    double bpm = 0; ///< the height of the line
    StepMark mark = StepMark::none;
    double markBpm = 0; ///< the height of the mark: a try's own tempo
};

/// A day on which something was played: steps first … first + count - 1.
struct CurveDay {
    Date date;
    std::size_t first = 0;
    std::size_t count = 0;
};

struct CurveSteps {
    std::vector<CurveStep> steps;
    std::vector<CurveDay> days;
    double last = 0;   ///< where the tempo stands after the last step
    double target = 0; ///< of the passage as it is now
};

/// The steps of the view: void runs left out, tempi set by hand seen in the runs after them.
[[nodiscard]] CurveSteps stepsOf(const PassageRecord& record, const CurveView& view);

} // namespace piolo::plots
