// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/pick/steady_division.h"

#include <algorithm>

namespace piolo::score {

namespace {

constexpr std::int32_t mostPulses = 8;

bool holdAll(std::int32_t pulses, std::span<const Fraction> onsets, Fraction beat) {
    return std::ranges::all_of(
        onsets, [&](const Fraction& onset) { return pulses % ratio(onset, beat).denominator == 0; });
}

} // namespace

Division steadyDivision(std::span<const Fraction> onsets, Fraction beat) {
    for (std::int32_t pulses = 1; pulses <= mostPulses; ++pulses)
        if (holdAll(pulses, onsets, beat)) return {pulses, true};
    return {1, false};
}

} // namespace piolo::score
