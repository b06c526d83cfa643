// SPDX-License-Identifier: GPL-3.0-or-later
// Scales, keys and notes in the words of the player's language.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "core/scales/scale_part.h"
#include "core/scales/scale_settings.h"

namespace piolo::text {

/// "E♭".
[[nodiscard]] QString keyName(Tonic tonic);
/// "E♭4": as written, the octave as in scientific pitch notation.
[[nodiscard]] QString noteName(WrittenPitch pitch);
/// What is left of a note's name without a double sharp or flat: F sharp of F with three sharps.
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
/// "quintuplets", of so many notes to a quarter beat.
[[nodiscard]] QString subdivisionOf(std::int32_t notesPerBeat);
/// "E♭ major in thirds, two octaves, quintuplets".
[[nodiscard]] QString scaleTitle(const Scale& scale);
/// How a scale comes to end on a beat; "" when it comes out even.
[[nodiscard]] QString endingText(const ScaleEnding& ending);
/// "3 flats", "no sharps or flats"; for none: that its accidentals stand at the notes.
[[nodiscard]] QString signatureText(std::optional<int> fifths);

} // namespace piolo::text
