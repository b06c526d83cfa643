// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage breaks: its misses by bar and beat.
#pragma once

#include "core/history/notebook.h"
#include "core/rule/build_up.h"

#include <optional>
#include <vector>

namespace piolo {

struct MissedBeat {
    std::int32_t bar = 1;  ///< the part's own number; a pick-up is the first bar's less one
    std::int32_t beat = 1; ///< from 1
    std::int32_t count = 0;
    bool operator==(const MissedBeat&) const = default;
};

struct Misses {
    std::vector<MissedBeat> beats; ///< in the order of the music, only those with a miss
    std::int32_t runs = 0;         ///< clean and missed, of every kind but those aside
    std::int32_t placed = 0;       ///< misses in `beats`
    std::int32_t elsewhere = 0;    ///< misses whose place is not known, or not in the passage as it is now

    [[nodiscard]] std::int32_t inBar(std::int32_t bar) const noexcept;
};

/// The player hears a slip and then presses: each place is moved back by `reactionMillis` at the run's tempo,
/// not past the passage's first note. Days before `since` are left out. A place is read in the passage's
/// present meter and bars.
[[nodiscard]] Misses missesByBar(const PassageRecord& record, std::int32_t reactionMillis,
                                 std::optional<Date> since = std::nullopt);

/// Fewer misses than this say nothing about a place.
inline constexpr std::int32_t missesForAStretch = 3;

/// The bars to make a passage of: the shortest stretch that holds at least half of the placed misses (of
/// several the one that holds most, then the first), and the bar before it to run up. Nothing when there are
/// too few misses, when it is longer than a third of the passage, or for an open-ended one.
[[nodiscard]] std::optional<BuildUpPart> worstStretch(const Misses& misses, const Music& music);

} // namespace piolo
