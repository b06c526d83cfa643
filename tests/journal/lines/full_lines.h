// SPDX-License-Identifier: GPL-3.0-or-later
// A line of every kind of fact, for tests that damage it.
#pragma once

#include "core/history/fact.h"

#include <nlohmann/json.hpp>
#include <vector>

namespace piolo::test {

/// One fact of every kind in the order of FactBody, with all optional values.
std::vector<Fact> fullFacts();
/// At least one fact of every kind in the same order, with optional values missing or empty.
std::vector<Fact> sparseFacts();
/// The lines of fullFacts(), without checksums.
std::vector<nlohmann::json> fullLines();

} // namespace piolo::test
