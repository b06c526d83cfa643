// SPDX-License-Identifier: GPL-3.0-or-later
// Runs that nobody listened to.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"

#include <string_view>
#include <vector>

namespace piolo {

/// Runs that nobody listened to are void after all (the player's "no" after a long stretch without a key).
struct DoubtFact {
    static constexpr std::string_view kindName = "doubt";
    static constexpr FactRole role = FactRole::corrects;

    Id passage;
    std::vector<Id> runs;
    bool operator==(const DoubtFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, DoubtFact& fact) {
    in.field("passage", fact.passage);
    in.field("runs", fact.runs);
}

} // namespace piolo
