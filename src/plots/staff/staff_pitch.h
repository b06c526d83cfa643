// SPDX-License-Identifier: GPL-3.0-or-later
// Where pitches go on a staff, what the key signature changes, and which accidentals are still needed.
#pragma once

#include "plots/staff/staff_rhythm.h"

#include <optional>
#include <vector>

namespace piolo::plots {

/// Steps above the lowest line: 0 the lowest line, 4 the middle, 8 the highest; negative with ledger lines.
[[nodiscard]] int staffPosition(WrittenPitch pitch, Clef clef) noexcept;
/// The positions of the signature's signs, from left to right.
[[nodiscard]] std::vector<int> signaturePositions(int fifths, Clef clef);

/// The note in the previous event to which `note` of `event` is tied; nothing if it is attacked again.
[[nodiscard]] std::optional<std::size_t> tiedFrom(const StaffMusic& music, const StaffRhythm& rhythm,
                                                  std::size_t event, std::size_t note);

/// For each event, which of its notes need an accidental: those that differ from the last sign in the bar for
/// their letter and octave or, without one, from the signature. A tied note needs no sign.
[[nodiscard]] std::vector<std::vector<bool>> accidentalsOf(const StaffMusic& music,
                                                           const StaffRhythm& rhythm);

} // namespace piolo::plots
