// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo curves of several passages of a practice log.
#pragma once

#include "core/history/notebook.h"
#include "plots/curve/curve_series.h"

#include <vector>

namespace piolo::plots {

/// The curves of these passages, with names and due dates. Passages without a run have none.
[[nodiscard]] std::vector<CurveSeries> curvesOf(const Notebook& notebook, const std::vector<Id>& passages,
                                                CurveBy by);
} // namespace piolo::plots
