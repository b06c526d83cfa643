// SPDX-License-Identifier: GPL-3.0-or-later
// Where the click sounds, as it is typed: the part of a passage's draft that is its click pattern.
//
// Fields: clickOn and swung (int), accents (one digit a beat), swing, barsOn, barsOff, silentBars,
// leftOutBeats, seed, breaths, breathBelow (text). An empty swing stands for 1:1, an empty breathBelow for
// every tempo.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/passage/passage.h"
#include "models/passages/draft_reader.h"

namespace piolo::models {

[[nodiscard]] QVariantMap clickDraftOf(const ClickPattern& click);
/// The pattern typed, with a good value in place of each faulty one; the faults stay with the reader.
[[nodiscard]] ClickPattern clickOf(DraftReader& reader, const Music& music);

/// How beat `beat` (from 0) is accented: by hand, or as its group says.
[[nodiscard]] Accent accentOf(const ClickPattern& click, const Meter& meter, int beat);
/// The accents typed, with the next one for `beat`: strong, half strong, plain, silent, and again. The beats
/// before it keep what they have.
[[nodiscard]] QString withNextAccent(const ClickPattern& click, const Meter& meter, int beat);

} // namespace piolo::models
