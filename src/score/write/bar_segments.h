// SPDX-License-Identifier: GPL-3.0-or-later
// Notes cut at the bar lines, with the gaps between them.
#pragma once

#include "core/music/note.h"
#include "score/write/tuplet_spans.h"

#include <span>
#include <vector>

namespace piolo::score {

/// Notes that begin and end together.
struct Chord {
    std::vector<const Note*> heads;
    TickRange range; ///< from where the first bar would begin if it were whole
};

/// A chord or a part of one; without heads, silence.
struct BarPiece {
    std::vector<const Note*> heads;
    TickRange range; ///< from where its bar would begin if it were whole
    bool fromBefore = false;
    bool goesOn = false;
};

/// What fills `bar`, from its begin to its end. `chords` are in the order of time and do not overlap; `bar`
/// counts as they do, and begins later than its grid's line only in a pick-up. Silence is cut at beats where
/// it begins or ends inside a tuplet.
[[nodiscard]] std::vector<BarPiece> barPieces(std::span<const Chord> chords, TickRange bar,
                                              const TickGrid& grid);

} // namespace piolo::score
