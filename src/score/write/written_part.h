// SPDX-License-Identifier: GPL-3.0-or-later
// One player's part, ready to be written as a score.
#pragma once

#include "core/music/clef.h"
#include "core/music/note.h"
#include "core/passage/passage.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace piolo::score {

struct WrittenPart {
    std::string title;
    std::string composer;   ///< empty: not written
    std::string instrument; ///< the part's name
    Clef clef = Clef::treble;
    std::int32_t fifths = 0;        ///< of the written key: -7…7, number of sharps, negative for flats
    std::int32_t transposition = 0; ///< semitones from the written to the sounding note
    Music music;
    std::optional<Tempo> tempo; ///< of the meter's beat; nothing: no tempo mark is written
    std::vector<Note> notes;    ///< in order of time, measured from the first moment, pick-up included
};

} // namespace piolo::score
