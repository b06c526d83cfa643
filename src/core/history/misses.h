// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage breaks: its misses by bar and beat.
#pragma once

#include "core/history/notebook.h"
#include "core/rule/build_up.h"

#include <optional>
#include <vector>

namespace piolo {

struct MissedBeat {
    std::int32_t bar = 1;  ///< the part's own number; a pick-up is one less than the first bar
    std::int32_t beat = 1; ///< counted from 1
    std::int32_t count = 0;
    bool operator==(const MissedBeat&) const = default;
};

struct Misses {
    std::vector<MissedBeat> beats; ///< in the order of the music; only beats with a miss
    std::int32_t runs = 0;         ///< clean and missed, of every kind except those aside
    std::int32_t placed = 0;       ///< misses in `beats`
    std::int32_t elsewhere = 0;    ///< misses whose place is unknown, or not in the passage as it is now

    [[nodiscard]] std::int32_t inBar(std::int32_t bar) const noexcept;
};

/// Players press some time after a slip, so each place is moved back by `reactionMillis` at the run's tempo,
/// but not before the passage's first note. Days before `since` are left out. Places refer to the passage's
/// current meter and bars.
[[nodiscard]] Misses missesByBar(const PassageRecord& record, std::int32_t reactionMillis,
                                 std::optional<Date> since = std::nullopt);

/// Fewer misses than this give no evidence about a place.
inline constexpr std::int32_t missesForAStretch = 3;

/// The bars for a smaller passage: the shortest stretch that contains at least half of the placed misses (if
/// there are several, the one with the most misses, then the first), plus the bar before it as a lead-in.
/// Nothing if there are too few misses, if it is longer than a third of the passage, or if the passage is
/// open-ended.
[[nodiscard]] std::optional<BuildUpPart> worstStretch(const Misses& misses, const Music& music);

} // namespace piolo
