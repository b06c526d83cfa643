// SPDX-License-Identifier: GPL-3.0-or-later
// A fact as one line of JSON. docs/journal.md has the keys of each kind.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"

#include <string>
#include <string_view>

namespace piolo::journal {

/// The version of the format written here; higher ones are kept and not folded.
inline constexpr int formatVersion = 1;
/// Longer lines are refused (lineTooLong).
inline constexpr std::size_t longestLine = 65'536;

/// One JSON object without a newline, keys in a fixed order.
[[nodiscard]] std::string toLine(const Fact& fact);
/// Faults: badJson, notUtf8, lineTooLong, badFact (a key is missing), badFactValue (a value is out of range),
/// unknownKind and newerFormat (kept in the file, not folded). `place` goes into the fault.
Result<Fact> fromLine(std::string_view line, const Place& place);

} // namespace piolo::journal
