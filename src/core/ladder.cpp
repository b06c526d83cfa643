// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/ladder.h"

#include <algorithm>

namespace piolo {

std::vector<Tempo> rungs(const Rule& rule, Tempo present) {
    std::vector<Tempo> ladder{present};
    while (ladder.back() > rule.floor)
        ladder.push_back(std::max(stepDown(ladder.back(), rule.step, rule.climb), rule.floor));
    std::reverse(ladder.begin(), ladder.end());
    while (ladder.back() < rule.target)
        ladder.push_back(std::min(stepUp(ladder.back(), rule.step, rule.climb), rule.target));
    return ladder;
}

} // namespace piolo
