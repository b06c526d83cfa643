// SPDX-License-Identifier: GPL-3.0-or-later
// The notes of a part of a passage.
#pragma once

#include "core/music/note.h"
#include "core/passage/passage.h"
#include "core/rule/build_up.h"

#include <vector>

namespace piolo {

/// The notes of `whole` that begin in `part`, measured from the beginning of the part. `notes` are measured
/// from the beginning of `whole`, pick-up included. A part that starts at the first bar keeps the pick-up;
/// the landing note is kept.
[[nodiscard]] std::vector<Note> notesOf(const BuildUpPart& part, const Music& whole,
                                        const std::vector<Note>& notes);

/// True if notes of one also fit the other: the same bars in the same meter with the same pick-up. The felt
/// beat, the count-in and other values do not matter.
[[nodiscard]] bool sameBars(const Music& a, const Music& b) noexcept;

} // namespace piolo
