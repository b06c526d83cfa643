// SPDX-License-Identifier: GPL-3.0-or-later
// The beats on offer, from the longest to the shortest, and their texts in drafts.
#pragma once

#include "core/time/meter.h"

#include <QString>

#include <array>

namespace piolo::models {

inline constexpr std::array beatUnits{BeatUnit::half, BeatUnit::dottedHalf, BeatUnit::quarter,
                                      BeatUnit::dottedQuarter, BeatUnit::eighth};

/// "3/8"
[[nodiscard]] inline QString beatWord(BeatUnit beat) {
    return QString::fromStdString(fractionOf(beat).text());
}

} // namespace piolo::models
