// SPDX-License-Identifier: GPL-3.0-or-later
// What stands inside a stretch of bars and keeps it from being played straight through.
#pragma once

#include "core/base/fault.h"
#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <optional>

namespace piolo::score {

/// The first repeat, ending or jump that the stretch goes across: barsGoRound.
[[nodiscard]] std::optional<Fault> goesRound(const Part& part, Stretch stretch);
/// The first change of meter or tempo after the beginning: barsChange.
[[nodiscard]] std::optional<Fault> changes(const Score& score, const Part& part, Stretch stretch);

} // namespace piolo::score
