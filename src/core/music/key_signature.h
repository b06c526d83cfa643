// SPDX-License-Identifier: GPL-3.0-or-later
// The sharps or flats at the beginning of a staff.
#pragma once

#include "core/music/note.h"
#include "core/scales/scale.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace piolo {

/// Sharps (positive) or flats (negative), -7…7.
inline constexpr int mostFifths = 7;

/// The signature under which a scale is written: that of the major or minor key, or of the mode, from which
/// it is derived; 0 for the kinds that belong to no key (chromatic, whole tone, both diminished, altered,
/// diminished arpeggio). Nothing if it would need more than seven accidentals; it is then written without a
/// signature.
[[nodiscard]] std::optional<int> fifthsOf(Tonic tonic, ScaleKind kind) noexcept;

/// The sharp (1) or flat (-1) that the signature gives that letter; 0 if none. Common practice.
[[nodiscard]] std::int8_t signatureAlter(char step, int fifths) noexcept;

/// The signature with which the fewest notes need an accidental; if there are several, the smallest, and
/// sharps before flats. Notes tied to the previous one need none.
[[nodiscard]] int likelyFifths(const std::vector<Note>& notes) noexcept;

} // namespace piolo
