// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of a part, converted to what a passage needs.
#pragma once

#include "core/base/result.h"
#include "core/music/note.h"
#include "core/passage/passage.h"
#include "score/read/score.h"

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace piolo::score {

struct Excerpt {
    Music music;
    bool onGrid = true;         ///< every note begins on a pulse of the suggested subdivision
    std::optional<Tempo> tempo; ///< of the mark in force at the beginning of the stretch, in the meter's beat
    std::vector<Note> notes;    ///< of one voice, in order of time; without grace notes and rests
};

/// Indices into Part::bars, both inclusive.
struct Stretch {
    std::size_t first = 0;
    std::size_t last = 0;
};

/// The first bar at or after `from` with this printed number.
[[nodiscard]] std::optional<std::size_t> barNumbered(const Part& part, std::string_view number,
                                                     std::size_t from = 0);

/// `part` is an index into Score::parts; the stretch must be inside that part. A repeat or a change at the
/// very edge of the stretch is allowed. Faults, without a location: barsGoRound, barsChange, meterNotCounted,
/// barNotWhole, noWholeBar.
[[nodiscard]] Result<Excerpt> excerpt(const Score& score, std::size_t part, Stretch stretch);

/// The notes to keep in a passage, without those of zero length. Empty if there are more than
/// Passage::mostNotes, or if a time cannot be written to the journal (a numerator or denominator above
/// 999999999).
[[nodiscard]] std::vector<Note> notesKept(const Excerpt& made);

/// The marked tempo becomes the target, and half of it, in whole BPM, the start. Without a mark, both are
/// those of any new passage.
[[nodiscard]] Tempi tempiOf(const Excerpt& made);

} // namespace piolo::score
