// SPDX-License-Identifier: GPL-3.0-or-later
// Sets of pieces and passages, made up from a seed.
#pragma once

#include "core/passage_set.h"
#include "random_facts.h"

namespace piolo::test {

/// Up to four pieces and up to six passages, each of one of them or of none.
PassageSet randomSet(RandomFacts& random);

} // namespace piolo::test
