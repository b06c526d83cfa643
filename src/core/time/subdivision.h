// SPDX-License-Identifier: GPL-3.0-or-later
// Pulses to the beat, and what the trade calls them for each beat unit.
#pragma once

#include "core/time/meter.h"

#include <cstdint>

namespace piolo {

/// The trade's name of a subdivision. `other`: no name of its own, shown as "n to the beat".
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

/// 1 to 8 pulses to the beat.
inline constexpr int mostPulsesToTheBeat = 8;

/// The name of `pulses` to a beat of `beat`. Common practice, as the table in docs/time.md.
[[nodiscard]] SubdivisionName nameOf(BeatUnit beat, int pulses) noexcept;

} // namespace piolo
