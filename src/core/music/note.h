// SPDX-License-Identifier: GPL-3.0-or-later
// A note of a passage: its written pitch, its sounding pitch and its time.
#pragma once

#include "core/time/fraction.h"

#include <cstdint>

namespace piolo {

/// As in the player's part. Octave 4 begins at middle C.
struct WrittenPitch {
    char step = 'C';        ///< 'A' to 'G'
    std::int8_t alter = 0;  ///< in semitones: -1 flat, 1 sharp, -3…3
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

/// Times are fractions of a whole note. Notes with the same onset form a chord.
struct Note {
    WrittenPitch written;
    std::int32_t sounding = 60; ///< MIDI note number 0…127, after transposition
    Fraction onset;             ///< from the beginning of the passage, pick-up included
    Fraction length;
    bool tiedBefore = false; ///< continues the previous note: not attacked again
    bool tiedAfter = false;
    NoteArticulation articulation;
    bool operator==(const Note&) const = default;
};

/// The MIDI note number of a written pitch without transposition; 60 is middle C.
[[nodiscard]] constexpr std::int32_t midiNumber(WrittenPitch pitch) noexcept {
    constexpr std::int32_t fromC[] = {9, 11, 0, 2, 4, 5, 7}; // A to G
    return fromC[pitch.step - 'A'] + pitch.alter + 12 * (pitch.octave + 1);
}

} // namespace piolo
