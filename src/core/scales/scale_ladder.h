// SPDX-License-Identifier: GPL-3.0-or-later
// The notes of a scale, one above the other, rightly spelled.
#pragma once

#include "core/music/note.h"
#include "core/scales/scale.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace piolo {

enum class Direction : std::uint8_t { up, down };

/// A note of a scale against its tonic: letters above it, and semitones above it.
struct Degree {
    int steps = 0;
    int semitones = 0;
};

/// The degrees of a kind within an octave, from the tonic. Those of the chromatic scale are its notes' places
/// only: it is spelled by direction. The kinds' degrees are those of docs/scales.md.
[[nodiscard]] std::vector<Degree> degreesOf(ScaleKind kind, Direction direction);

/// A scale without end in both directions: note 0 is the tonic, note -1 the one below it.
///
/// Each degree keeps its letter, with double accidentals where the key asks for them; a note that would need
/// three takes the next letter. The chromatic scale has sharps on the way up and flats on the way down.
class ScaleLadder {
public:
    ScaleLadder(Tonic tonic, int octave, ScaleKind kind);

    [[nodiscard]] WrittenPitch at(int index, Direction direction) const;
    /// Notes to the octave.
    [[nodiscard]] int size() const noexcept { return static_cast<int>(up_.size()); }

private:
    [[nodiscard]] WrittenPitch chromatic(int index, Direction direction) const;

    WrittenPitch tonic_;
    ScaleKind kind_;
    std::vector<Degree> up_;
    std::vector<Degree> down_;
};

/// Not so many sharps or flats that no one could read it: three are written as the next letter.
[[nodiscard]] WrittenPitch readable(WrittenPitch pitch) noexcept;

} // namespace piolo
