// SPDX-License-Identifier: GPL-3.0-or-later
// A note of a passage: what is written, what sounds, and where.
#pragma once

#include "core/time/fraction.h"

#include <cstdint>

namespace piolo {

/// As on the player's part. Octave 4 begins at middle C.
struct WrittenPitch {
    char step = 'C';        ///< 'A' to 'G'
    std::int8_t alter = 0;  ///< semitones: -1 flat, 1 sharp, -3…3
    std::int8_t octave = 4; ///< 0…9
    bool operator==(const WrittenPitch&) const = default;
};

/// How a note is played, as written.
struct NoteArticulation {
    bool staccato = false;
    bool accent = false;
    bool tenuto = false;
    bool slurBegins = false;
    bool slurEnds = false;
    bool operator==(const NoteArticulation&) const = default;
};

/// Times are fractions of a whole note. Notes that begin together are a chord.
struct Note {
    WrittenPitch written;
    std::int32_t sounding = 60; ///< MIDI number 0…127, after the part's transposition
    Fraction onset;             ///< from the passage's first moment, pick-up included
    Fraction length;
    bool tiedBefore = false; ///< goes on from the note before it: not played anew
    bool tiedAfter = false;
    NoteArticulation articulation;
    bool operator==(const Note&) const = default;
};

/// The MIDI number of a written pitch, 60 being middle C; no transposition.
[[nodiscard]] constexpr std::int32_t midiNumber(WrittenPitch pitch) noexcept {
    constexpr std::int32_t fromC[] = {9, 11, 0, 2, 4, 5, 7}; // A to G
    return fromC[pitch.step - 'A'] + pitch.alter + 12 * (pitch.octave + 1);
}

} // namespace piolo
