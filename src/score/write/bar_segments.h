// SPDX-License-Identifier: GPL-3.0-or-later
// Notes split at the bar lines, with the gaps between them.
#pragma once

#include "core/music/note.h"
#include "score/write/tuplet_spans.h"

#include <span>
#include <vector>

namespace piolo::score {

/// Notes that begin and end together.
struct Chord {
    std::vector<const Note*> heads;
    TickRange range; ///< from where the first bar would begin if it were full
};

/// A chord or part of one; silence if it has no heads.
struct BarSegment {
    std::vector<const Note*> heads;
    TickRange range; ///< from where its bar would begin if it were full
    bool fromBefore = false;
    bool goesOn = false;
};

/// The pieces that fill `bar` from beginning to end. `chords` are in order of time and do not overlap. `bar`
/// uses the same time base; only a pick-up begins later than its grid's bar line. Silence that begins or ends
/// inside a tuplet is split at beats.
[[nodiscard]] std::vector<BarSegment> barSegments(std::span<const Chord> chords, TickRange bar,
                                                  const TickGrid& grid);

} // namespace piolo::score
