// SPDX-License-Identifier: GPL-3.0-or-later
// Lines as written before they had checksums, or as fixed by hand.
#pragma once

#include "journal/lines/fact_line.h"
#include "journal/lines/line_sum.h"

#include <string>

namespace piolo::test {

/// `line` without its checksum.
inline std::string withoutSum(const std::string& line) {
    const auto found = journal::sumOf(line);
    return found.state == journal::SumState::none ? line : std::string(found.summed) + "}";
}

/// The line of a fact without its checksum, so that changes to it are reported as themselves.
inline std::string bareLine(const Fact& fact) { return withoutSum(journal::toLine(fact)); }

} // namespace piolo::test
