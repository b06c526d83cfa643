// SPDX-License-Identifier: GPL-3.0-or-later
// The sign at the head of a staff.
#pragma once

#include <cstdint>

namespace piolo {

/// Of the instrument's part.
enum class Clef : std::uint8_t {
    treble, ///< G on the second line
    bass    ///< F on the fourth line
};

} // namespace piolo
