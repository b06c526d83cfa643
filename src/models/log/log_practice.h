// SPDX-License-Identifier: GPL-3.0-or-later
// Minutes a day, and the days that were missed, as the log shows them.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantList>

#include "core/history/practice_days.h"

#include <span>

namespace piolo::models {

/// One map for each day: {spoken, today, missed, longGap, runs, apart, throughs}; the last three are
/// shares of the longest day, for minutes with the click, other runs, and run-throughs. `missed`: a day
/// without practice that is over; `longGap`: one of two or more in a row.
[[nodiscard]] QVariantList practiceMaps(std::span<const PracticeDay> days, std::span<const MissedDays> gaps,
                                        Date today);
/// "Four weeks, never two days missed in a row." One missed day is fine and said so; two in a row are pointed
/// out. The last of `days` is today. "" when nothing was played in them.
[[nodiscard]] QString gapWords(std::span<const PracticeDay> days, std::span<const MissedDays> gaps);

} // namespace piolo::models
