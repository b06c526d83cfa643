// SPDX-License-Identifier: GPL-3.0-or-later
// Writes one part as MusicXML.
#pragma once

#include "core/base/result.h"
#include "score/read/score.h"
#include "score/write/written_part.h"

#include <string>

namespace piolo::score {

/// MusicXML 4.0, partwise, UTF-8. The same part gives the same bytes. Reading it gives the notes back as they
/// are, but for those that are no single note value: they come back in parts that are tied. Faults, without a
/// place: those of notationOf(), and notesTransposed when a note does not sound `transposition` from where it
/// is written.
[[nodiscard]] Result<std::string> musicXmlOf(const WrittenPart& part);

/// For so many semitones: whole octaves as octave-change, the rest as the usual interval.
[[nodiscard]] Transposition transpositionOf(std::int32_t semitones) noexcept;

} // namespace piolo::score
