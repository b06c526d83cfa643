// SPDX-License-Identifier: GPL-3.0-or-later
// A passage as typed: texts by field.
//
// Fields: title, openEnded, firstBar, bars, pickup, meter, groups, beat, subdivision, landing, countIn,
// breath, start, target, floor, drop, climb, cleanRuns, notches, gentle, articulation, rhythm, group,
// fingering, and those of click_draft.h.
// openEnded, landing, notches and gentle are bool, subdivision, articulation and rhythm int, the others text.
// An empty beat, groups or floor means the usual one.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/passage/passage.h"

namespace piolo::models {

/// A passage to start from: four bars of 4/4 in quarters, 60 to 96.
[[nodiscard]] Passage freshPassage();
[[nodiscard]] QVariantMap draftOf(const Passage& passage);
/// The beat in which that meter is usually counted, as "1/4"; "" if it is not a valid meter or has none.
[[nodiscard]] QString usualBeat(const QString& meter);

} // namespace piolo::models
