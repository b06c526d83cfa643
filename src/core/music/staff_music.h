// SPDX-License-Identifier: GPL-3.0-or-later
// Music as it stands on one staff: what is drawn, before anyone says how.
#pragma once

#include "core/music/clef.h"
#include "core/passage/passage.h"

#include <cstdint>
#include <vector>

namespace piolo {

/// A passage or a scale whose notes are known.
struct StaffMusic {
    Clef clef = Clef::treble;
    std::int8_t fifths = 0;    ///< of the key signature: sharps, or flats below 0; -7…7
    Music music;               ///< meter, pick-up, the part's own bar numbers
    std::vector<Note> notes{}; ///< in the order of time; gaps between them are rests
    bool endsHere = true;      ///< a final bar line; an excerpt goes on after its last bar
    bool operator==(const StaffMusic&) const = default;
};

/// A scale has its instrument's clef, its key's signature and its end. Any other passage does not say its
/// clef and signature: it gets the bass clef where its notes lie below middle C on the whole, and their
/// likelyFifths().
[[nodiscard]] StaffMusic staffOf(const Passage& passage);

} // namespace piolo
