// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of a part, made into what a passage needs.
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
    bool onGrid = true;         ///< every note begins on a pulse of the proposed subdivision
    std::optional<Tempo> tempo; ///< of the mark in force where the stretch begins, in the meter's beat
    std::vector<Note> notes;    ///< of one voice, in the order of time; no grace notes, no rests
};

/// Both ends inside; places in Part::bars.
struct Stretch {
    std::size_t first = 0;
    std::size_t last = 0;
};

/// The first bar at or after `from` with this printed number.
[[nodiscard]] std::optional<std::size_t> barNumbered(const Part& part, std::string_view number,
                                                     std::size_t from = 0);

/// `part` is a place in Score::parts and the stretch lies in it. A repeat or a change at the very edge of the
/// stretch is no hindrance. Faults, without a place: barsGoRound, barsChange, meterNotCounted, barNotWhole,
/// noWholeBar.
[[nodiscard]] Result<Excerpt> excerpt(const Score& score, std::size_t part, Stretch stretch);

/// The notes that a passage keeps, those of no length left out. None when there are more than
/// Passage::mostNotes, or one lies where no practice log can write it (a part of a fraction above 999999999).
[[nodiscard]] std::vector<Note> notesKept(const Excerpt& made);

/// The marked tempo is the target and half of it, in whole BPM, the start; without a mark both are as for any
/// new passage.
[[nodiscard]] Tempi tempiOf(const Excerpt& made);

} // namespace piolo::score
