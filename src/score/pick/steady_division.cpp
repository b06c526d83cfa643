// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/pick/steady_division.h"

#include <algorithm>

namespace piolo::score {

namespace {

constexpr std::int32_t mostPulses = 8;

std::ptrdiff_t heldBy(std::int32_t pulses, std::span<const Fraction> onsets, Fraction beat) {
    return std::ranges::count_if(
        onsets, [&](const Fraction& onset) { return pulses % ratio(onset, beat).denominator == 0; });
}

} // namespace

Division steadyDivision(std::span<const Fraction> onsets, Fraction beat) {
    std::int32_t best = 1;
    for (std::int32_t pulses = 2; pulses <= mostPulses; ++pulses)
        if (heldBy(pulses, onsets, beat) > heldBy(best, onsets, beat)) best = pulses;
    return {best, heldBy(best, onsets, beat) == std::ssize(onsets)};
}

} // namespace piolo::score
