// SPDX-License-Identifier: GPL-3.0-or-later
// The same speed in another beat.
#pragma once

#include <string_view>

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/time/meter.h"

namespace piolo {

/// The same speed is felt in another beat: tempo, start, target, floor and steps are converted, the streak
/// goes on. It has no effect where that cannot be done exactly (core/felt_beat.h).
struct FeltBeatFact {
    static constexpr std::string_view kindName = "feltBeat";
    static constexpr FactRole role = FactRole::edits;

    Id passage;
    BeatUnit beat = BeatUnit::quarter;
    bool operator==(const FeltBeatFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, FeltBeatFact& fact) {
    in.field("passage", fact.passage);
    in.field("beat", fact.beat);
}

} // namespace piolo
