// SPDX-License-Identifier: GPL-3.0-or-later
// A fact taken back.
#pragma once

#include <string_view>

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"

namespace piolo {

/// Retracts the fact named: a run, a late miss, a doubt, a correction, a tempo, an edit, a stage or a note of
/// the same passage, or a run-through of a piece. It has no effect on another back. A correction that stands
/// after it brings the fact back.
struct BackFact {
    static constexpr std::string_view kindName = "back";
    static constexpr FactRole role = FactRole::takesBack;

    Id passage; ///< or the piece of the run-through
    Id retracts;
    bool operator==(const BackFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, BackFact& fact) {
    in.field("passage", fact.passage);
    in.field("retracts", fact.retracts);
}

} // namespace piolo
