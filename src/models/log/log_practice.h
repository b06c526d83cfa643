// SPDX-License-Identifier: GPL-3.0-or-later
// Practice time per day and missed days, as the log shows them.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

#include "core/history/practice_days.h"

#include <span>

namespace piolo::models {

/// One map for each day: {spoken, today, missed, longGap, runs, apart, throughs}; the last three are shares
/// of the longest day, for practice with the click, other runs, and run-throughs. `missed`: a past day
/// without practice; `longGap`: one of two or more such days in a row.
[[nodiscard]] QVariantList practiceMaps(std::span<const PracticeDay> days, std::span<const MissedDays> gaps,
                                        Date today);
/// "You have not missed a day in four weeks." One missed day is fine, and the text says so; two in a row are
/// mentioned. The last of `days` is today. "" if nothing was played on them.
[[nodiscard]] QString gapWords(std::span<const PracticeDay> days, std::span<const MissedDays> gaps);

} // namespace piolo::models
