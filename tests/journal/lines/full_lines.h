// SPDX-License-Identifier: GPL-3.0-or-later
// A line of every kind of fact, for tests that spoil it.
#pragma once

#include "core/history/fact.h"

#include <nlohmann/json.hpp>
#include <vector>

namespace piolo::test {

/// One fact of every kind in the order of FactBody, with everything that may be missing.
std::vector<Fact> fullFacts();
/// At least one fact of every kind in the same order, without anything that may be missing, or with empty
/// values for it.
std::vector<Fact> sparseFacts();
/// The lines of fullFacts(), without sums.
std::vector<nlohmann::json> fullLines();

} // namespace piolo::test
