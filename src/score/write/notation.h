// SPDX-License-Identifier: GPL-3.0-or-later
// Notes as notated on a staff: in bars, as note values, tuplets, ties and rests.
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
    std::vector<const Note*> heads{}; ///< empty for a rest
    NoteShape shape{};
    bool fillsBar = false; ///< a whole-bar rest, without a shape
    std::int64_t at = 0;   ///< from where its bar would begin if it were full
    std::int64_t ticks = 0;
    bool fromBefore = false; ///< continues a note that began earlier
    bool goesOn = false;     ///< the same note continues after this one
    std::int32_t actual = 1; ///< this many notes in the time of `normal` ones
    std::int32_t normal = 1;
    std::string_view normalType{}; ///< note type of the normal notes of a tuplet
    bool tupletBegins = false;
    bool tupletEnds = false;
};

struct NotatedBar {
    std::int32_t number = 1; ///< for a pick-up: one less than that of the first full bar
    bool pickUp = false;
    std::vector<NotatedNote> notes; ///< one after the other; they fill the bar
};

struct Notation {
    std::int64_t ticksPerWhole = 4;
    std::vector<NotatedBar> bars;
};

/// Keeps every time exactly. `notes` must outlive the notation. A note becomes a single symbol if one note
/// value with at most two dots, or a part of a tuplet, has its length; otherwise it becomes several tied
/// symbols. Gaps become rests. After the last of `music.bars` there may be one more bar for a note that lands
/// there; if the number of bars is unknown, there are as many as the notes need. Faults, without a location:
/// notesOverlap, notesTooFine, notesOutside.
[[nodiscard]] Result<Notation> notationOf(const Music& music, const std::vector<Note>& notes);

} // namespace piolo::score
