// SPDX-License-Identifier: GPL-3.0-or-later
// The usual ways to put a passage together from parts of it.
#pragma once

#include "core/passage/passage.h"

#include <cstdint>
#include <vector>

namespace piolo {

/// Some bars of a passage, in the part's own numbers.
struct BuildUpPart {
    std::int32_t firstBar = 1;
    std::int32_t bars = 1;
    bool operator==(const BuildUpPart&) const = default;
};

/// The last bar, the last two, … the whole passage. Nothing for an open-ended one.
[[nodiscard]] std::vector<BuildUpPart> lastBarFirst(const Music& music);
/// Parts of `barsEach` bars (at least 1), one after the other; the last has what is left. Each lands on the
/// downbeat with which the next begins. Nothing for an open-ended passage.
[[nodiscard]] std::vector<BuildUpPart> overlappingParts(const Music& music, std::int32_t barsEach);
/// What is played of `whole` in a part that lies inside it: only a part from its first bar has its pick-up,
/// and one that ends before its end lands on the next downbeat.
[[nodiscard]] Music musicOf(const BuildUpPart& part, const Music& whole);

/// Bars played before and after a passage in its context.
inline constexpr std::int32_t contextBars = 2;
/// What is played of a passage in its context: contextBars more on either side, as far as the piece reaches
/// (`pieceBars` 0: its end is not known). With bars before it there is no pick-up. Open-ended: as it is.
[[nodiscard]] Music inContext(const Music& music, std::int32_t pieceBars);

} // namespace piolo
