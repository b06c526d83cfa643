// SPDX-License-Identifier: GPL-3.0-or-later
// The ids that a fact names, and the one that it introduces.
#pragma once

#include "core/history/fact.h"

#include <vector>

namespace piolo::practice {

/// The passages, pieces, runs and facts that must be recorded somewhere for this fact to make sense.
[[nodiscard]] std::vector<Id> namedBy(const FactBody& body);
/// The passage or piece that the fact describes; none for all other facts, and for an edit of a passage
/// without tempi.
[[nodiscard]] Id describedBy(const FactBody& body);

} // namespace piolo::practice
