// SPDX-License-Identifier: GPL-3.0-or-later
// The sharps or flats at the head of a staff.
#pragma once

#include "core/music/note.h"
#include "core/scales/scale.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace piolo {

/// Sharps (positive) or flats (negative), -7…7.
inline constexpr int mostFifths = 7;

/// The signature under which a scale is written: that of the major or minor key, or of the mode, it is taken
/// from; 0 for the kinds that belong to no key (chromatic, whole tone, both diminished, altered, diminished
/// arpeggio). Nothing where it would need more than seven signs: it is then written without one.
[[nodiscard]] std::optional<int> fifthsOf(Tonic tonic, ScaleKind kind) noexcept;

/// The sharp (1) or flat (-1) that the signature gives that letter; 0: none. Common practice.
[[nodiscard]] std::int8_t signatureAlter(char step, int fifths) noexcept;

/// The signature with which the fewest notes need a sign of their own; of several the smallest, sharps before
/// flats. What is tied to the note before needs none.
[[nodiscard]] int likelyFifths(const std::vector<Note>& notes) noexcept;

} // namespace piolo
