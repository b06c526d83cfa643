// SPDX-License-Identifier: GPL-3.0-or-later
// Lines as they were written before they had sums, and as a hand would mend them.
#pragma once

#include "journal/lines/fact_line.h"
#include "journal/lines/line_sum.h"

#include <string>

namespace piolo::test {

/// `line` with its sum taken out.
inline std::string withoutSum(const std::string& line) {
    const auto found = journal::sumOf(line);
    return found.state == journal::SumState::none ? line : std::string(found.summed) + "}";
}

/// The line of a fact, without its sum: what is changed in it then is told by its own name.
inline std::string bareLine(const Fact& fact) { return withoutSum(journal::toLine(fact)); }

} // namespace piolo::test
