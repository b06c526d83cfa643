// SPDX-License-Identifier: GPL-3.0-or-later
// The settings of practice.
#pragma once

#include "core/base/fields.h"
#include "core/rule/day_opening.h"
#include "core/scales/scale_settings.h"

#include <cstdint>

namespace piolo {

/// Practice settings: they travel with the folder.
struct PracticeSettings {
    static constexpr std::int32_t mostGapMillis = 30'000;
    static constexpr std::int32_t mostPauseAfterRuns = 9999;
    static constexpr std::int32_t mostSecureDays = 999;
    static constexpr std::int32_t mostReactionMillis = 1000;

    std::int32_t gapMillisAfterMiss = 4000; ///< 0…30000, at least this between a miss and the next first note
    bool playOn = false;                    ///< a miss lets the run go on to its end
    std::int32_t pauseAfterRuns = 20;       ///< runs without a key; 0: never
    std::int32_t secureDays = 3;            ///< different days with a secure
    DayOpening dayOpening = DayOpening::twoRungsBelow;
    std::int32_t reactionMillis = 250; ///< 0…mostReactionMillis, from hearing a slip to pressing the key
    ScaleSettings scales{};
    bool operator==(const PracticeSettings&) const = default;
};

template <typename Fields>
void describe(Fields& in, PracticeSettings& settings) {
    in.field("gapMs", settings.gapMillisAfterMiss, Range{0, PracticeSettings::mostGapMillis});
    in.field("playOn", settings.playOn);
    in.field("pauseAfterRuns", settings.pauseAfterRuns, Range{0, PracticeSettings::mostPauseAfterRuns});
    in.field("secureDays", settings.secureDays, Range{1, PracticeSettings::mostSecureDays});
    in.field("dayOpening", settings.dayOpening);
    // Written always; lines from before it was a setting do not have it.
    in.unusual("reactionMs", true, [&] {
        in.field("reactionMs", settings.reactionMillis, Range{0, PracticeSettings::mostReactionMillis});
    });
    unlessUsual(in, "scales", settings.scales, {});
}

} // namespace piolo
