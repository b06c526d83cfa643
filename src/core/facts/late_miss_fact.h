// SPDX-License-Identifier: GPL-3.0-or-later
// A miss marked after its run.
#pragma once

#include <string_view>

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"

namespace piolo {

/// A run that ended clean was missed after all, at its own place. Taking this back makes it clean again.
struct LateMissFact {
    static constexpr std::string_view kindName = "late";
    static constexpr FactRole role = FactRole::corrects;

    Id passage;
    Id run;
    bool operator==(const LateMissFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, LateMissFact& fact) {
    in.field("passage", fact.passage);
    in.field("run", fact.run);
}

} // namespace piolo
