// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/ladder.h"

#include <algorithm>

namespace piolo {

namespace {

void climb(std::vector<Tempo>& ladder, const Rule& rule) {
    while (ladder.back() < rule.target)
        ladder.push_back(std::min(stepUp(ladder.back(), rule.step, rule.climb), rule.target));
}

} // namespace

std::vector<Tempo> rungs(const Rule& rule, Tempo present) {
    std::vector<Tempo> ladder{present};
    while (ladder.back() > rule.floor)
        ladder.push_back(std::max(stepDown(ladder.back(), rule.step, rule.climb), rule.floor));
    std::reverse(ladder.begin(), ladder.end());
    climb(ladder, rule);
    return ladder;
}

std::vector<Tempo> rungsUp(const Rule& rule, Tempo lowest) {
    std::vector<Tempo> ladder{lowest};
    climb(ladder, rule);
    return ladder;
}

} // namespace piolo
