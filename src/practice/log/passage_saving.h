// SPDX-License-Identifier: GPL-3.0-or-later
// Records a passage as it is wanted.
#pragma once

#include "practice/log/practice_book.h"

namespace piolo::practice {

/// Window thread. Records the groups in which `wanted` differs from its record, nothing if there are none; a
/// passage that is not recorded yet is created. The origin of a recorded passage stays. `wanted` has an id.
void savePassage(PracticeBook& book, Passage wanted);

} // namespace piolo::practice
