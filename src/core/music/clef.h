// SPDX-License-Identifier: GPL-3.0-or-later
// The clef at the beginning of a staff.
#pragma once

#include <cstdint>

namespace piolo {

/// The clef of an instrument's part.
enum class Clef : std::uint8_t {
    treble, ///< G on the second line
    bass    ///< F on the fourth line
};

} // namespace piolo
