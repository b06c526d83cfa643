// SPDX-License-Identifier: GPL-3.0-or-later
// The wind instruments that scales are written for: clef, transposition, range.
#pragma once

#include "core/music/clef.h"
#include "core/music/note.h"
#include "core/scales/scale.h"

#include <span>
#include <string_view>

namespace piolo {

/// The lowest and the highest note that are played, as written.
struct NoteRange {
    WrittenPitch lowest;
    WrittenPitch highest;
    bool operator==(const NoteRange&) const = default;
};

/// Added to the written note to get the sounding one.
struct Transposition {
    int semitones = 0;
    int letters = 0;
};

struct Instrument {
    std::string_view name; ///< "alto saxophone"
    Clef clef = Clef::treble;
    Transposition transposition;
    NoteRange range; ///< the usual one; players differ: docs/scales.md has each with its source
};

/// In the order of the score.
[[nodiscard]] std::span<const Instrument> instruments() noexcept;
/// None of that name: nullptr.
[[nodiscard]] const Instrument* instrumentNamed(std::string_view name) noexcept;

/// The tonic that sounds when a scale of that kind is written from `written`; by the next letter where its
/// key has fewer signs.
[[nodiscard]] Tonic concertOf(Tonic written, ScaleKind kind, Transposition transposition) noexcept;

} // namespace piolo
