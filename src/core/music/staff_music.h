// SPDX-License-Identifier: GPL-3.0-or-later
// The music on one staff: what to draw, but not how.
#pragma once

#include "core/music/clef.h"
#include "core/passage/passage.h"

#include <cstdint>
#include <vector>

namespace piolo {

/// A passage or a scale whose notes are known.
struct StaffMusic {
    Clef clef = Clef::treble;
    std::int8_t fifths = 0;    ///< of the key signature: number of sharps, negative for flats; -7…7
    Music music;               ///< meter, pick-up, the part's own bar numbers
    std::vector<Note> notes{}; ///< in order of time; gaps between them are rests
    bool endsHere = true;      ///< true: ends with a final bar line; false: an excerpt that continues after
                               ///< its last bar
    bool operator==(const StaffMusic&) const = default;
};

/// A scale uses the clef of its instrument, the signature of its key, and ends there. Other passages do not
/// state a clef or signature: they get the bass clef if their notes are mostly below middle C, and the
/// signature from likelyFifths().
[[nodiscard]] StaffMusic staffOf(const Passage& passage);

} // namespace piolo
