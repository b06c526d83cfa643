// SPDX-License-Identifier: GPL-3.0-or-later
// The short way to read a line that stands there exactly as this version writes it.
#pragma once

#include "core/history/fact.h"

#include <optional>
#include <string_view>

namespace piolo::journal {

/// Reads runs, tempi, late misses and backs with a right sum. Nothing for any other line: fromLine() then has
/// the answer, fault or not. What is given here is what fromLine()'s long way gives.
[[nodiscard]] std::optional<Fact> writtenFact(std::string_view line);

} // namespace piolo::journal
