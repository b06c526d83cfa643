// SPDX-License-Identifier: GPL-3.0-or-later
// What the drill answers to a run or a key.
#pragma once

#include <cstdint>

namespace piolo::practice {

/// A plain value.
enum class DrillFeedback : std::uint8_t {
    none,
    clean,
    climbed,
    secure,
    missed,
    found,
    takenBack,
    nothingToTakeBack,
    putBack
};

} // namespace piolo::practice
