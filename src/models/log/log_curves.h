// SPDX-License-Identifier: GPL-3.0-or-later
// The curves beside the log, and the text for a point on one of them.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "plots/curve/curve_series.h"
#include "practice/figures/curve_passages.h"

#include <vector>

namespace piolo::models {

/// "coda: Tuesday, 18 April, at 84, 12 of 14 clean"; by runs "coda: run 128, 18 April, at 84, missed".
[[nodiscard]] QString pointWords(const plots::CurveSeries& series, std::size_t point, Date today);
/// The picture in words: "coda at 84 of 96; trio at 60 of 72".
[[nodiscard]] QString curveWords(const std::vector<plots::CurveSeries>& curves);

} // namespace piolo::models
