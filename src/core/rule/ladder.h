// SPDX-License-Identifier: GPL-3.0-or-later
// The rungs of a passage, for drawing the ladder.
#pragma once

#include "core/rule/rule.h"

#include <vector>

namespace piolo {

/// The rungs through `present`, lowest first: down by climbs to the floor, up by climbs to the target (the
/// last steps shortened). `present` is always included, even below the floor or above the target. The rule
/// must be within its limits: with a climb below 1, this would not end.
[[nodiscard]] std::vector<Tempo> rungs(const Rule& rule, Tempo present);
/// The rungs from `lowest` up; only `lowest` if it is at or above the target.
[[nodiscard]] std::vector<Tempo> rungsUp(const Rule& rule, Tempo lowest);

} // namespace piolo
