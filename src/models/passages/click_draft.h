// SPDX-License-Identifier: GPL-3.0-or-later
// Where the click sounds, as typed: the part of a passage's draft that is its click pattern.
//
// Fields: clickOn and swung (int), accents (one digit per beat), swing, barsOn, barsOff, silentBars,
// leftOutBeats, seed, breaths, breathBelow (text). An empty swing means 1:1, an empty breathBelow means every
// tempo.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/passage/passage.h"
#include "models/passages/draft_reader.h"

namespace piolo::models {

[[nodiscard]] QVariantMap clickDraftOf(const ClickPattern& click);
/// The pattern typed, with a valid value instead of each invalid one; the reader keeps the faults.
[[nodiscard]] ClickPattern clickOf(DraftReader& reader, const Music& music);

/// How `beat` (counted from 0) is accented: with its own accent, or according to its group.
[[nodiscard]] Accent accentOf(const ClickPattern& click, const Meter& meter, int beat);
/// The accents typed, with the next accent for `beat`: strong, half strong, plain, silent, then strong again.
/// Earlier beats keep theirs.
[[nodiscard]] QString withNextAccent(const ClickPattern& click, const Meter& meter, int beat);

} // namespace piolo::models
