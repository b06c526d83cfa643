// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of pieces and passages, generated from a seed.
#pragma once

#include "../lines/random_facts.h"
#include "core/passage/passage_set.h"

namespace piolo::test {

/// Up to four pieces and up to six passages, each belonging to one of the pieces or to none.
PassageSet randomSet(RandomFacts& random);

} // namespace piolo::test
