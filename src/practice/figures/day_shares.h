// SPDX-License-Identifier: GPL-3.0-or-later
// Practice time per day as shares of the longest day, and which days were missed.
#pragma once

#include "core/history/practice_days.h"

#include <optional>
#include <span>
#include <vector>

namespace piolo::practice {

/// The days shown: four weeks up to today.
inline constexpr int practiceDaysShown = 28;

/// Shares of the longest day. Plain values.
struct DayShares {
    double runs = 0;      ///< with the click
    double apart = 0;     ///< other runs
    double throughs = 0;  ///< run-throughs
    bool missed = false;  ///< a past day without practice
    bool longGap = false; ///< one of two or more such days in a row
};

/// One for each day.
[[nodiscard]] std::vector<DayShares> sharesOf(std::span<const PracticeDay> days,
                                              std::span<const MissedDays> gaps);
/// The longest day in minutes, rounded up: the height of the picture.
[[nodiscard]] int mostMinutes(std::span<const PracticeDay> days);

/// What to say about missed days.
struct GapFigures {
    enum class Kind {
        nothingPlayed, ///< on all those days
        longGap,       ///< two or more days in a row; `gap` is the newest
        noneSinceFirst,
        noneAtAll,
        single, ///< one now and then
    };
    Kind kind = Kind::nothingPlayed;
    std::optional<MissedDays> gap;
    bool open = false; ///< it extends to yesterday, and today can still end it
};

/// The last of `days` is today.
[[nodiscard]] GapFigures gapFiguresOf(std::span<const PracticeDay> days, std::span<const MissedDays> gaps);

} // namespace piolo::practice
