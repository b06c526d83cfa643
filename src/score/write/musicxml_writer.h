// SPDX-License-Identifier: GPL-3.0-or-later
// Writes one part as MusicXML.
#pragma once

#include "core/base/result.h"
#include "score/read/score.h"
#include "score/write/written_part.h"

#include <string>

namespace piolo::score {

/// MusicXML 4.0, partwise, UTF-8. The same part gives the same bytes. Reading it back gives the same notes,
/// except that a note that is not a single note value comes back as several tied ones. Faults, without a
/// location: those of notationOf(), and notesTransposed if the interval between a note's written and sounding
/// pitch is not `transposition`.
[[nodiscard]] Result<std::string> musicXmlOf(const WrittenPart& part);

/// The transposition by that many semitones: whole octaves as octave-change, the rest as the usual interval.
[[nodiscard]] Transposition transpositionOf(std::int32_t semitones) noexcept;

} // namespace piolo::score
