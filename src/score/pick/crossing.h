// SPDX-License-Identifier: GPL-3.0-or-later
// What prevents a stretch of bars from being played straight through.
#pragma once

#include "core/base/fault.h"
#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <optional>

namespace piolo::score {

/// barsGoRound for the first repeat, ending or jump that the stretch crosses.
[[nodiscard]] std::optional<Fault> goesRound(const Part& part, Stretch stretch);
/// barsChange for the first change of meter or tempo after the beginning of the stretch.
[[nodiscard]] std::optional<Fault> changes(const Score& score, const Part& part, Stretch stretch);

} // namespace piolo::score
