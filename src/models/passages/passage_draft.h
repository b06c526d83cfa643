// SPDX-License-Identifier: GPL-3.0-or-later
// A passage as it is typed: texts by field, and the passage or the faults that come of them.
//
// Fields: title, openEnded, firstBar, bars, pickup, meter, groups, beat, subdivision, landing, countIn,
// breath, start, target, floor, drop, climb, cleanRuns, notches, gentle, articulation, rhythm, group,
// fingering, and those of models/click_draft.h.
// openEnded, landing, notches and gentle are bool, subdivision, articulation and rhythm int, the others text.
// An empty beat, groups or floor stands for the usual one.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/passage/passage.h"

namespace piolo::models {

/// The passage typed, with a good value in place of each faulty one, and one plain line for each faulty
/// field.
struct DraftCheck {
    Passage passage;
    QVariantMap faults;
};

/// A passage ready to be typed over: four bars of 4/4 in quarters, 60 to 96.
[[nodiscard]] Passage freshPassage();
[[nodiscard]] QVariantMap draftOf(const Passage& passage);
[[nodiscard]] DraftCheck checkDraft(const QVariantMap& draft);
/// The beat in which that meter is usually counted, as "1/4"; "" when it is no meter or has none.
[[nodiscard]] QString usualBeat(const QString& meter);

} // namespace piolo::models
