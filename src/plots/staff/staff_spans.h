// SPDX-License-Identifier: GPL-3.0-or-later
// The notes of a passage one after the other, and the bars that contain them.
#pragma once

#include "plots/staff/staff_rhythm.h"

#include <vector>

namespace piolo::plots {

/// A note, a chord, or the silence between two.
struct StaffSpan {
    StaffTicks start = 0; ///< from the beginning of the passage
    StaffTicks end = 0;
    std::vector<std::size_t> notes; ///< empty for silence
};

struct StaffSpans {
    std::vector<StaffSpan> spans; ///< without gaps; the last bar may be open
    std::vector<StaffBar> bars;
    std::vector<std::size_t> inexact; ///< notes that overlap the next, or fall between ticks
};

[[nodiscard]] StaffSpans spansOf(const StaffMusic& music);

} // namespace piolo::plots
