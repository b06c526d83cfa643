// SPDX-License-Identifier: GPL-3.0-or-later
// Scales, keys and notes in the player's language.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/music/instrument.h"
#include "core/scales/scale_part.h"
#include "core/scales/scale_settings.h"

namespace piolo::text {

/// "E♭".
[[nodiscard]] QString keyName(Tonic tonic);
/// "E♭4": as written, with the octave in scientific pitch notation.
[[nodiscard]] QString noteName(WrittenPitch pitch);
/// A note's name without a double sharp or flat: F sharp for F with three sharps.
[[nodiscard]] Tonic withoutDouble(WrittenPitch pitch);
/// "E♭ major", "C harmonic minor" …: the key and the kind.
[[nodiscard]] QString scaleName(Tonic tonic, ScaleKind kind);
/// "major", "harmonic minor".
[[nodiscard]] QString kindName(ScaleKind kind);
/// "Two octaves", "In thirds".
[[nodiscard]] QString rangeName(ScaleRange range);
[[nodiscard]] QString patternName(ScalePattern pattern);
/// "By fourths".
[[nodiscard]] QString orderName(KeyOrder order);
[[nodiscard]] QString instrumentName(std::string_view name);
/// "Double reeds".
[[nodiscard]] QString familyName(InstrumentFamily family);
/// "quintuplets": for that many notes per quarter beat.
[[nodiscard]] QString subdivisionOf(std::int32_t notesPerBeat);
/// "E♭ major in thirds, two octaves, quintuplets".
[[nodiscard]] QString scaleTitle(const Scale& scale);
/// How a scale is made to end on a beat; "" if it needs no change.
[[nodiscard]] QString endingText(const ScaleEnding& ending);
/// "3 flats", "no sharps or flats"; without a signature, that accidentals are written before the notes.
[[nodiscard]] QString signatureText(std::optional<int> fifths);

} // namespace piolo::text
