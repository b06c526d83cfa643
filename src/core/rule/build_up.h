// SPDX-License-Identifier: GPL-3.0-or-later
// The usual ways to assemble a passage from parts.
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

/// The last bar, the last two and so on, up to the whole passage. Empty for an open-ended one.
[[nodiscard]] std::vector<BuildUpPart> lastBarFirst(const Music& music);
/// Parts of `barsEach` bars (at least 1), one after the other; the last one has the rest. Each lands on the
/// downbeat with which the next begins. Empty for an open-ended passage.
[[nodiscard]] std::vector<BuildUpPart> overlappingParts(const Music& music, std::int32_t barsEach);
/// The music of a part of `whole`: only a part that starts at its first bar has its pick-up, and one that
/// ends before its end lands on the next downbeat.
[[nodiscard]] Music musicOf(const BuildUpPart& part, const Music& whole);

/// Bars before and after a passage that are played in context.
inline constexpr std::int32_t contextBars = 2;
/// The music of a passage in context: contextBars more on either side, within the piece (`pieceBars` 0: its
/// end is unknown). Extra bars before it replace the pick-up. Open-ended music is returned unchanged.
[[nodiscard]] Music inContext(const Music& music, std::int32_t pieceBars);

} // namespace piolo
