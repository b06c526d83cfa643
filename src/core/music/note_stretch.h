// SPDX-License-Identifier: GPL-3.0-or-later
// The notes of a part of a passage.
#pragma once

#include "core/music/note.h"
#include "core/passage/passage.h"
#include "core/rule/build_up.h"

#include <vector>

namespace piolo {

/// Those that begin in `part` of `whole`, counted from the part's first moment. `notes`: of `whole`, from its
/// first moment, pick-up included. A part from the first bar on keeps the pick-up; the landing note is kept.
[[nodiscard]] std::vector<Note> notesOf(const BuildUpPart& part, const Music& whole,
                                        const std::vector<Note>& notes);

/// True when notes of one are notes of the other: the same bars of the same meter, with the same pick-up. The
/// beat in which it is felt, the count-in and the rest do not matter.
[[nodiscard]] bool sameBars(const Music& a, const Music& b) noexcept;

} // namespace piolo
