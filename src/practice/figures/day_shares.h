// SPDX-License-Identifier: GPL-3.0-or-later
// Minutes a day as shares of the longest day, and which days were missed.
#pragma once

#include "core/history/practice_days.h"

#include <optional>
#include <span>
#include <vector>

namespace piolo::practice {

/// The days of the picture: four weeks up to today.
inline constexpr int practiceDaysShown = 28;

/// Shares of the longest day. Plain values.
struct DayShares {
    double runs = 0;      ///< with the click
    double apart = 0;     ///< other runs
    double throughs = 0;  ///< run-throughs
    bool missed = false;  ///< a day without practice that is over
    bool longGap = false; ///< one of two or more of those in a row
};

/// One for each day.
[[nodiscard]] std::vector<DayShares> sharesOf(std::span<const PracticeDay> days,
                                              std::span<const MissedDays> gaps);
/// The longest day in minutes, rounded up: the height of the picture.
[[nodiscard]] int mostMinutes(std::span<const PracticeDay> days);

/// What there is to say of missed days.
struct GapFigures {
    enum class Kind {
        nothingPlayed, ///< in all those days
        longGap,       ///< two days or more in a row; `gap` is the newest
        noneSinceFirst,
        noneAtAll,
        single, ///< one now and then
    };
    Kind kind = Kind::nothingPlayed;
    std::optional<MissedDays> gap;
    bool open = false; ///< it lasts until yesterday, and today can still end it
};

/// The last of `days` is today.
[[nodiscard]] GapFigures gapFiguresOf(std::span<const PracticeDay> days, std::span<const MissedDays> gaps);

} // namespace piolo::practice
