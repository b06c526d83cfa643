// SPDX-License-Identifier: GPL-3.0-or-later
// With which letter a note is written.
#pragma once

#include "core/music/note.h"

namespace piolo {

inline constexpr int lettersOfOctave = 7;
inline constexpr int semitonesOfOctave = 12;

/// A number split into octaves, even if negative: rest is 0…size-1.
struct Octaves {
    int octave;
    int rest;
};
[[nodiscard]] constexpr Octaves octavesOf(int number, int size) noexcept {
    const int rest = (number % size + size) % size;
    return {(number - rest) / size, rest};
}

/// Letters above C of octave 0, ignoring accidentals: middle C has 28.
[[nodiscard]] int lettersAboveC(WrittenPitch pitch) noexcept;
/// The pitch on that letter, altered so that it is `midi`.
[[nodiscard]] WrittenPitch spelledAt(int letters, int midi) noexcept;
/// The same note written with the next letter up (if sharp) or down (if flat).
[[nodiscard]] WrittenPitch byNextLetter(WrittenPitch pitch) noexcept;

} // namespace piolo
