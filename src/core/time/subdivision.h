// SPDX-License-Identifier: GPL-3.0-or-later
// Pulses per beat, and their musical names for each beat unit.
#pragma once

#include "core/time/meter.h"

#include <cstdint>

namespace piolo {

/// The name of a subdivision. `other`: it has no name and is shown as "n to the beat".
enum class SubdivisionName : std::uint8_t {
    dottedHalves,
    halves,
    dottedQuarters,
    quarters,
    quarterTriplets,
    eighths,
    eighthTriplets,
    triplets,
    sixteenths,
    sixteenthTriplets,
    quintuplets,
    sextuplets,
    septuplets,
    thirtySeconds,
    duplets,
    quadruplets,
    other
};

/// 1 to 8 pulses per beat.
inline constexpr int mostPulsesToTheBeat = 8;

/// The name of `pulses` per beat of `beat`. Common practice, as in the table in docs/time.md.
[[nodiscard]] SubdivisionName nameOf(BeatUnit beat, int pulses) noexcept;

} // namespace piolo
