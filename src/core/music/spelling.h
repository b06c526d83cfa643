// SPDX-License-Identifier: GPL-3.0-or-later
// Which letter a note is written with.
#pragma once

#include "core/music/note.h"

namespace piolo {

inline constexpr int lettersOfOctave = 7;
inline constexpr int semitonesOfOctave = 12;

/// A number cut into octaves, also below 0: rest is 0…size-1.
struct Octaves {
    int octave;
    int rest;
};
[[nodiscard]] constexpr Octaves octavesOf(int number, int size) noexcept {
    const int rest = (number % size + size) % size;
    return {(number - rest) / size, rest};
}

/// Letters above C of octave 0, accidentals not counted: middle C has 28.
[[nodiscard]] int lettersAboveC(WrittenPitch pitch) noexcept;
/// The letter that stands there, altered so that it is `midi`.
[[nodiscard]] WrittenPitch spelledAt(int letters, int midi) noexcept;
/// The same note by the next letter up (of a sharp) or down (of a flat).
[[nodiscard]] WrittenPitch byNextLetter(WrittenPitch pitch) noexcept;

} // namespace piolo
