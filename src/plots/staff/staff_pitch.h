// SPDX-License-Identifier: GPL-3.0-or-later
// Where pitches stand on a staff, what the key signature says of them, and which accidentals that leaves.
#pragma once

#include "plots/staff/staff_rhythm.h"

#include <optional>
#include <vector>

namespace piolo::plots {

/// Steps above the lowest line: 0 the lowest line, 4 the middle, 8 the highest; below 0 with ledger lines.
[[nodiscard]] int staffPosition(WrittenPitch pitch, Clef clef) noexcept;
/// The positions of the signature's signs, from left to right.
[[nodiscard]] std::vector<int> signaturePositions(int fifths, Clef clef);

/// The note in the event before to which `note` of `event` is tied; nothing when it is played anew.
[[nodiscard]] std::optional<std::size_t> tiedFrom(const StaffMusic& music, const StaffRhythm& rhythm,
                                                  std::size_t event, std::size_t note);

/// For each event, which of its notes need an accidental: those that differ from what stands last in the bar
/// for their letter and octave, or else from the signature. A tied note keeps its own without a sign.
[[nodiscard]] std::vector<std::vector<bool>> accidentalsOf(const StaffMusic& music,
                                                           const StaffRhythm& rhythm);

} // namespace piolo::plots
