// SPDX-License-Identifier: GPL-3.0-or-later
// A passage with its piece, made from bars picked from a score.
#pragma once

#include "core/passage/passage_set.h"
#include "score/pick/excerpt.h"
#include "score/read/score.h"

namespace piolo::practice {

/// One piece and one passage with new ids, using score::tempiOf() and score::notesKept().
[[nodiscard]] PassageSet pickedPassage(const score::Score& score, const score::Part& part,
                                       score::Stretch stretch, const score::Excerpt& made);

} // namespace piolo::practice
