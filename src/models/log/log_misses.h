// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage breaks, as the log shows it, and the smaller passages made from that.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/history/misses.h"

namespace piolo::models {

/// {title, note, bars: [{label, spoken, beats: [{share, count, worst}]}]}: by beat for up to eight bars,
/// otherwise by bar. `worst` marks those with at least half as many misses as the worst has.
[[nodiscard]] QVariantMap missesMap(const PassageRecord& record, const Misses& misses);

/// A passage of these bars of `whole`: with its tempi, its click and its manner, the bars in its name, and
/// linked to `whole`. Its id is not set yet.
[[nodiscard]] Passage passageOfBars(const Passage& whole, const BuildUpPart& part);

} // namespace piolo::models
