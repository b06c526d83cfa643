// SPDX-License-Identifier: GPL-3.0-or-later
// Where a rule settles, approximately: the sources and their limits are in docs/rule.md.
#pragma once

#include "core/rule/rule.h"

namespace piolo {

/// p* = (drop / (drop + climb))^(1 / cleanRuns): the share of clean runs, 0…1, at which climbs and drops
/// balance.
[[nodiscard]] double settlesAt(const Rule& rule) noexcept;
/// The same for steps that are not integers. All arguments must be positive.
[[nodiscard]] double settlesAt(double drop, double climb, int cleanRuns) noexcept;

/// (1 - p^n) / ((1 - p)·p^n): the mean number of runs until n clean ones in a row, if each is clean with
/// probability p. n at p = 1; infinity at p <= 0.
[[nodiscard]] double expectedRunsToClimb(double p, int cleanRuns) noexcept;

} // namespace piolo
