// SPDX-License-Identifier: GPL-3.0-or-later
// A stage that the player chose.
#pragma once

#include <string_view>

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/passage/stage.h"

namespace piolo {

/// The player says which stage a passage is in.
struct StageFact {
    static constexpr std::string_view kindName = "stage";
    static constexpr FactRole role = FactRole::edits;

    Id passage;
    Stage stage = Stage::slow;
    bool operator==(const StageFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, StageFact& fact) {
    in.field("passage", fact.passage);
    in.field("stage", fact.stage);
}

} // namespace piolo
