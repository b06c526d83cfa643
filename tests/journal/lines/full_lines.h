// SPDX-License-Identifier: GPL-3.0-or-later
// A line of every kind of fact, for tests that spoil it.
#pragma once

#include <nlohmann/json.hpp>
#include <vector>

namespace piolo::test {

/// With every optional key, in the order of FactBody; without sums.
std::vector<nlohmann::json> fullLines();

} // namespace piolo::test
