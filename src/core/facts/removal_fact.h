// SPDX-License-Identifier: GPL-3.0-or-later
// A passage or piece removed.
#pragma once

#include <string_view>

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"

namespace piolo {

/// A passage or a piece was removed, or restored.
struct RemovalFact {
    static constexpr std::string_view kindName = "removal";
    static constexpr FactRole role = FactRole::elsewhere;

    Id subject;
    bool removed = true;
    bool operator==(const RemovalFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, RemovalFact& fact) {
    in.field("subject", fact.subject);
    in.field("removed", fact.removed);
}

} // namespace piolo
