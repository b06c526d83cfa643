// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage breaks, as the log shows it, and the smaller passages made of that.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/history/misses.h"

namespace piolo::models {

/// {title, note, bars: [{label, spoken, beats: [{share, count, worst}]}]}: by beat up to eight bars, else by
/// bar. `worst` marks those with at least half as many misses as the worst has.
[[nodiscard]] QVariantMap missesMap(const PassageRecord& record, const Misses& misses);

/// A passage of these bars of `whole`: its tempi, its click and how it is played, its name with the bars; it
/// is linked to `whole`. Its id is still to come.
[[nodiscard]] Passage passageOfBars(const Passage& whole, const BuildUpPart& part);

} // namespace piolo::models
