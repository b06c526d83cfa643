// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage breaks, as the log shows it, and the smaller passages made of that.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/history/misses.h"

#include <vector>

namespace piolo::models {

/// Longer passages are not built up bar by bar.
inline constexpr std::int32_t mostBarsToBuildUp = 8;

/// {title, note, bars: [{label, spoken, beats: [{share, count, worst}]}]}: by beat up to eight bars, else by
/// bar. `worst` marks those with at least half as many misses as the worst has.
[[nodiscard]] QVariantMap missesMap(const PassageRecord& record, const Misses& misses);

/// A passage of these bars of `whole`: its tempi, its click and how it is played, its name with the bars; it
/// is linked to `whole`. Its id is still to come.
[[nodiscard]] Passage passageOfBars(const Passage& whole, const BuildUpPart& part);
/// The parts to build `whole` up from its last bar, the whole left out. None for a passage that is too long,
/// too short or open-ended.
[[nodiscard]] std::vector<BuildUpPart> partsFromTheEnd(const Music& whole);
/// Parts of two bars (of four when there are more than eight, of one when there are two), each landing on the
/// beat with which the next begins. None for a passage of one bar, of more than 32, or an open-ended one.
[[nodiscard]] std::vector<BuildUpPart> partsThatOverlap(const Music& whole);

} // namespace piolo::models
