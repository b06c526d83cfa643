// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/ladder.h"

#include <algorithm>

namespace piolo {

std::vector<Tempo> rungs(const Rule& rule, Tempo present) {
    std::vector<Tempo> ladder{present};
    while (ladder.back() > rule.floor) {
        const Tempo below = std::max(stepDown(ladder.back(), rule.step, rule.climb), rule.floor);
        if (below == ladder.back()) break;
        ladder.push_back(below);
    }
    std::reverse(ladder.begin(), ladder.end());
    while (ladder.back() < rule.target) {
        const Tempo above = std::min(stepUp(ladder.back(), rule.step, rule.climb), rule.target);
        if (above == ladder.back()) break;
        ladder.push_back(above);
    }
    return ladder;
}

} // namespace piolo
