// SPDX-License-Identifier: GPL-3.0-or-later
// The notes of a passage as a score.
#pragma once

#include "core/passage/passage.h"
#include "core/passage/piece.h"
#include "score/write/written_part.h"

namespace piolo::practice {

/// As a player reads it: the passage's title, the piece's composer and instrument, the target as its tempo
/// mark. What no passage knows is taken from its notes: the key that needs the fewest signs, the clef nearer
/// to them, and the transposition of the first of them.
[[nodiscard]] score::WrittenPart writtenPartOf(const Passage& passage, const Piece& piece);

} // namespace piolo::practice
