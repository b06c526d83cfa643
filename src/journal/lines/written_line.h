// SPDX-License-Identifier: GPL-3.0-or-later
// A fast way to read a line that is exactly as this version writes it.
#pragma once

#include "core/history/fact.h"

#include <optional>
#include <string_view>

namespace piolo::journal {

/// Reads runs, tempi, late misses and backs with a correct checksum. Nothing for any other line: fromLine()
/// then decides, with or without a fault. The result always equals that of fromLine()'s general way.
[[nodiscard]] std::optional<Fact> writtenFact(std::string_view line);

} // namespace piolo::journal
