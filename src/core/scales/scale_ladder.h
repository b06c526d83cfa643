// SPDX-License-Identifier: GPL-3.0-or-later
// The notes of a scale in ascending order, correctly spelled.
#pragma once

#include "core/music/note.h"
#include "core/scales/scale.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace piolo {

enum class Direction : std::uint8_t { up, down };

/// A note of a scale relative to its tonic: letters above it and semitones above it.
struct Degree {
    int steps = 0;
    int semitones = 0;
};

/// The degrees of a kind within one octave from the tonic, as in docs/scales.md. For the chromatic scale only
/// the positions matter: its spelling depends on the direction.
[[nodiscard]] std::vector<Degree> degreesOf(ScaleKind kind, Direction direction);

/// A scale that continues endlessly in both directions: note 0 is the tonic, note -1 the one below it.
///
/// Each degree keeps its letter, with double accidentals if the key needs them; a note that would need three
/// takes the next letter. The chromatic scale has sharps on the way up and flats on the way down.
class ScaleLadder {
public:
    ScaleLadder(Tonic tonic, int octave, ScaleKind kind);

    [[nodiscard]] WrittenPitch at(int index, Direction direction) const;
    /// Notes per octave.
    [[nodiscard]] int size() const noexcept { return static_cast<int>(up_.size()); }

private:
    [[nodiscard]] WrittenPitch chromatic(int index, Direction direction) const;

    WrittenPitch tonic_;
    ScaleKind kind_;
    std::vector<Degree> up_;
    std::vector<Degree> down_;
};

/// Limits accidentals to a readable number: a note with three is written with the next letter.
[[nodiscard]] WrittenPitch readable(WrittenPitch pitch) noexcept;

} // namespace piolo
