// SPDX-License-Identifier: GPL-3.0-or-later
// What was practised on each day, and which days were missed.
#pragma once

#include "core/history/notebook.h"

#include <array>
#include <span>
#include <vector>

namespace piolo {

/// What the practice time of a day was spent on: the kinds of runs, as in RunKind, and run-throughs.
enum class PracticeKind : std::uint8_t { run, attempt, silent, context, aside, runThrough };
inline constexpr std::size_t practiceKinds = runKindTable.size() + 1;

[[nodiscard]] constexpr PracticeKind practiceKind(RunKind kind) noexcept {
    return static_cast<PracticeKind>(kind);
}
static_assert(practiceKind(RunKind::aside) == PracticeKind::aside &&
              static_cast<std::size_t>(PracticeKind::runThrough) + 1 == practiceKinds);

struct PracticeDay {
    Date date;
    std::array<std::int64_t, practiceKinds> millis{}; ///< by kind, including void runs
    std::int32_t runs = 0;                            ///< clean and missed, only those that affect the rule
    std::int32_t clean = 0;                           ///< of those runs
    bool practised = false;                           ///< anything was played

    [[nodiscard]] std::int64_t totalMillis() const noexcept;
    [[nodiscard]] std::int64_t of(PracticeKind kind) const noexcept {
        return millis[static_cast<std::size_t>(kind)];
    }
};

/// Every date from `from` to `to`, both inclusive, in order. One pass over the notebook; passages and pieces
/// that have since been removed count as well.
[[nodiscard]] std::vector<PracticeDay> practiceDays(const Notebook& notebook, Date from, Date to);

/// Consecutive days on which nothing was played.
struct MissedDays {
    Date first;
    std::int32_t days = 1;
    bool operator==(const MissedDays&) const = default;
};

/// The gaps between the first day with practice and `today`, which is not missed until it is over. One missed
/// day is fine; two in a row are worth a reminder.
[[nodiscard]] std::vector<MissedDays> missedDays(std::span<const PracticeDay> days, Date today);

} // namespace piolo
