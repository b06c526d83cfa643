// SPDX-License-Identifier: GPL-3.0-or-later
// The number of equal pulses per beat that fits the notes of a stretch.
#pragma once

#include "core/time/fraction.h"

#include <cstdint>
#include <span>

namespace piolo::score {

struct Division {
    std::int32_t pulses = 1; ///< per beat, 1…8
    bool holdsAll = true;    ///< every onset falls on a pulse
};

/// The fewest pulses that include all onsets; if no division up to eight does, plain beats, because pulses
/// that fit a single bar would be wrong in all the others. Onsets are measured from a beat.
[[nodiscard]] Division steadyDivision(std::span<const Fraction> onsets, Fraction beat);

} // namespace piolo::score
