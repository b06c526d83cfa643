// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/day_opening.h"

#include <algorithm>

namespace piolo {

Tempo dayOpens(DayOpening opening, Tempo left, const Tempo* lastFullStreak, Tempo start,
               const Rule& rule) noexcept {
    if (opening == DayOpening::asLeft) return left;
    if (opening == DayOpening::start || lastFullStreak == nullptr) return std::min(start, left);
    const Tempo oneBelow = stepDown(*lastFullStreak, rule.step, rule.climb);
    const Tempo twoBelow = stepDown(oneBelow, rule.step, rule.climb);
    return std::min({std::max({twoBelow, start, rule.floor}), rule.target, left});
}

} // namespace piolo
