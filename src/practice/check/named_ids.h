// SPDX-License-Identifier: GPL-3.0-or-later
// The ids that a fact names, and those that it makes known.
#pragma once

#include "core/history/fact.h"

#include <vector>

namespace piolo::practice {

/// Passages, pieces, runs and facts that must be recorded somewhere for this fact to mean anything.
[[nodiscard]] std::vector<Id> namedBy(const FactBody& body);
/// The passage or piece that the fact describes; none for all other facts, and for an edit of a passage
/// without its tempi.
[[nodiscard]] Id describedBy(const FactBody& body);

} // namespace piolo::practice
