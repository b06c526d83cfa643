// SPDX-License-Identifier: GPL-3.0-or-later
// A tempo that was set.
#pragma once

#include <string_view>

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/facts/reason.h"
#include "core/time/tempo.h"

namespace piolo {

/// A tempo set by hand, or by a new day.
struct TempoFact {
    static constexpr std::string_view kindName = "tempo";
    static constexpr FactRole role = FactRole::plays;

    Id passage;
    Tempo tempo = Tempo::bpm(60);
    Reason reason = Reason::hand;
    bool operator==(const TempoFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, TempoFact& fact) {
    in.field("passage", fact.passage);
    in.field("tempo", fact.tempo);
    in.field("reason", fact.reason, OneOf<Reason>{setsTempo});
}

} // namespace piolo
