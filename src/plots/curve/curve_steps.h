// SPDX-License-Identifier: GPL-3.0-or-later
// What a tempo curve shows, before any geometry: one step for each run, in the order played.
#pragma once

#include "core/history/notebook.h"
#include "plots/curve/tempo_curve.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace piolo::plots {

/// The mark drawn at a step.
enum class StepMark : std::uint8_t { none, miss, cleanTry, missedTry };

/// One run or try. Tempi in BPM.
struct CurveStep {
    double bpm = 0; ///< the height of the line
    StepMark mark = StepMark::none;
    double markBpm = 0; ///< the height of the mark: a try's own tempo
};

/// A day with at least one run or try: steps first … first + count - 1.
struct CurveDay {
    Date date;
    std::size_t first = 0;
    std::size_t count = 0;
};

struct CurveSteps {
    std::vector<CurveStep> steps;
    std::vector<CurveDay> days;
    double last = 0;   ///< the tempo after the last step
    double target = 0; ///< the passage's current target
};

/// The steps in the view. Void runs are left out; a manual tempo change shows in the runs after it.
[[nodiscard]] CurveSteps stepsOf(const PassageRecord& record, const CurveView& view);

/// Beats per minute, for the axis.
[[nodiscard]] inline double bpmOf(Tempo tempo) { return tempo.thousandths() / 1000.0; }

} // namespace piolo::plots
