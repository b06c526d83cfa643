// SPDX-License-Identifier: GPL-3.0-or-later
// A scale as a part: its bars and its written and sounding notes.
#pragma once

#include "core/music/instrument.h"
#include "core/passage/passage.h"
#include "core/scales/scale_walk.h"

#include <optional>
#include <vector>

namespace piolo {

/// The music of a scale. In 4/4, counted in quarters; it begins on a downbeat, every note takes an equal part
/// of its beat, and the last tonic comes on a beat: as the landing note if that is a downbeat, otherwise held
/// to the end of its bar.
struct ScalePart {
    Music music;
    std::vector<Note> notes;
    std::optional<int> fifths; ///< the key signature; nothing: written without one
    ScaleEnding ending;
    WrittenPitch lowest; ///< of the notes
    WrittenPitch highest;
    bool altissimo = false; ///< goes above the range
};

/// The part of `scale` for an instrument with that range. Nothing if the range does not contain its tonic, if
/// it would have more than Passage::mostNotes notes, or if it exceeds octaves 0…9 or the MIDI note numbers.
[[nodiscard]] std::optional<ScalePart> scalePart(const Scale& scale, Transposition transposition,
                                                 NoteRange range);

/// True if the range contains that note in some octave.
[[nodiscard]] bool hasTonic(NoteRange range, Tonic tonic);

/// True if `a` sounds lower than `b` on the same instrument.
[[nodiscard]] constexpr bool below(WrittenPitch a, WrittenPitch b) noexcept {
    return midiNumber(a) < midiNumber(b);
}

} // namespace piolo
