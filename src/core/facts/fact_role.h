// SPDX-License-Identifier: GPL-3.0-or-later
// What the kinds of facts are for when passages are folded.
#pragma once

#include <cstdint>

namespace piolo {

/// What a kind is to the fold of its passage. Each kind says so itself, as `role`.
enum class FactRole : std::uint8_t {
    plays,     ///< practice on a day: it has an entry in the record, and can be taken back unless it is void
    corrects,  ///< changes what earlier facts count as; can be taken back
    takesBack, ///< retracts an earlier fact
    edits,     ///< says something about the passage from here on
    elsewhere  ///< not of a passage
};

} // namespace piolo
