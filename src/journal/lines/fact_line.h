// SPDX-License-Identifier: GPL-3.0-or-later
// A fact as one line of JSON. docs/journal.md lists the keys of each kind.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"

#include <string>
#include <string_view>

namespace piolo::journal {

/// The format version written here; facts with a higher one are kept but not folded.
inline constexpr int formatVersion = 1;
/// Longer lines are refused (lineTooLong).
inline constexpr std::size_t longestLine = 65'536;

/// One JSON object without a newline, with keys in a fixed order.
[[nodiscard]] std::string toLine(const Fact& fact);
/// Faults: badJson, notUtf8, lineTooLong, badFact (a key is missing), badFactValue (a value is out of range),
/// unknownKind and newerFormat (kept in the file but not folded). `location` is copied into the fault.
Result<Fact> fromLine(std::string_view line, const FaultLocation& location);

} // namespace piolo::journal
