// SPDX-License-Identifier: GPL-3.0-or-later
// A passage, with its piece, made of bars picked from a score.
#pragma once

#include "core/passage_set.h"
#include "score/excerpt.h"
#include "score/score.h"

namespace piolo::app {

/// One piece and one passage with new ids, with score::tempiOf() and score::notesKept().
[[nodiscard]] PassageSet pickedPassage(const score::Score& score, const score::Part& part,
                                       score::Stretch stretch, const score::Excerpt& made);

} // namespace piolo::app
