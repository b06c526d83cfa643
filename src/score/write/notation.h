// SPDX-License-Identifier: GPL-3.0-or-later
// Notes as they stand on a staff: in bars, as note values, tuplets, ties and rests.
#pragma once

#include "core/base/result.h"
#include "core/music/note.h"
#include "core/passage/passage.h"
#include "score/write/note_value.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace piolo::score {

/// A note, a chord or a rest. Times are in ticks of its Notation.
struct NotatedNote {
    std::vector<const Note*> heads{}; ///< none: a rest
    NoteShape shape{};
    bool fillsBar = false; ///< a rest for a whole bar, without a shape
    std::int64_t at = 0;   ///< from where its bar would begin if it were whole
    std::int64_t ticks = 0;
    bool fromBefore = false; ///< the rest of a note whose first part stands before this
    bool goesOn = false;     ///< more of the same note follows
    std::int32_t actual = 1; ///< actual notes in the time of normal ones
    std::int32_t normal = 1;
    std::string_view normalType{}; ///< of the normal notes of a tuplet
    bool tupletBegins = false;
    bool tupletEnds = false;
};

struct NotatedBar {
    std::int32_t number = 1; ///< of a pick-up: one less than the first whole bar's
    bool pickUp = false;
    std::vector<NotatedNote> notes; ///< one after the other; they fill the bar
};

struct Notation {
    std::int64_t ticksPerWhole = 4;
    std::vector<NotatedBar> bars;
};

/// Every tick of the notes is kept; `notes` must outlive the notation. A note is one symbol where one note
/// value with at most two dots, or a part of a tuplet, is as long as it, else several that are tied; gaps
/// become rests. After the last of `music.bars` comes one more bar for a note that lands there; without a
/// number of bars there are as many as the notes need. Faults, without a place: notesOverlap, notesTooFine,
/// notesOutside.
[[nodiscard]] Result<Notation> notationOf(const Music& music, const std::vector<Note>& notes);

} // namespace piolo::score
