// SPDX-License-Identifier: GPL-3.0-or-later
// Into how many equal pulses a beat is best divided for the notes of a stretch.
#pragma once

#include "core/time/fraction.h"

#include <cstdint>
#include <span>

namespace piolo::score {

struct Division {
    std::int32_t pulses = 1; ///< to the beat, 1…8
    bool holdsAll = true;    ///< every onset falls on a pulse
};

/// The fewest pulses on which all onsets fall; where no division up to eight holds them all, the fewest that
/// hold the most. Onsets are counted from a beat.
[[nodiscard]] Division steadyDivision(std::span<const Fraction> onsets, Fraction beat);

} // namespace piolo::score
