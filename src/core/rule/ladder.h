// SPDX-License-Identifier: GPL-3.0-or-later
// The rungs on which a passage can stand, for its picture.
#pragma once

#include "core/rule/rule.h"

#include <vector>

namespace piolo {

/// The rungs through `present`, lowest first: down by climbs to the floor, up by climbs to the target (the
/// last steps shortened). `present` is always among them, also below the floor or above the target. The rule
/// must keep its bounds: a climb below 1 would never arrive.
[[nodiscard]] std::vector<Tempo> rungs(const Rule& rule, Tempo present);
/// Those from `lowest` up: `lowest` alone at or above the target.
[[nodiscard]] std::vector<Tempo> rungsUp(const Rule& rule, Tempo lowest);

} // namespace piolo
