// SPDX-License-Identifier: GPL-3.0-or-later
// A scale as a part: its bars, its notes as written and as they sound.
#pragma once

#include "core/music/instrument.h"
#include "core/passage/passage.h"
#include "core/scales/scale_walk.h"

#include <optional>
#include <vector>

namespace piolo {

/// What is played of a scale. In 4/4, in quarters; it begins on a downbeat, each note has its part of a beat,
/// and the last tonic comes on a beat: as the landing note where that is a downbeat, else held to the end of
/// its bar.
struct ScalePart {
    Music music;
    std::vector<Note> notes;
    std::optional<int> fifths; ///< the key signature; none: written without one
    ScaleEnding ending;
    WrittenPitch lowest; ///< of the notes
    WrittenPitch highest;
    bool altissimo = false; ///< goes above the range
};

/// The part of `scale` on an instrument with that range. Nothing when the range has no tonic of it, when it
/// would have more than Passage::mostNotes notes, and when it leaves octaves 0…9 or MIDI's numbers.
[[nodiscard]] std::optional<ScalePart> scalePart(const Scale& scale, Transposition transposition,
                                                 NoteRange range);

/// The range has that note in some octave.
[[nodiscard]] bool hasTonic(NoteRange range, Tonic tonic);

/// True when `a` sounds lower than `b` on the same instrument.
[[nodiscard]] constexpr bool below(WrittenPitch a, WrittenPitch b) noexcept {
    return midiNumber(a) < midiNumber(b);
}

} // namespace piolo
