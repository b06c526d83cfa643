// SPDX-License-Identifier: GPL-3.0-or-later
// A whole piece, played through.
#pragma once

#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include "core/facts/stop.h"
#include "core/time/tempo.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace piolo {

/// A whole piece was played from start to finish, or given up.
struct RunThroughFact {
    static constexpr std::string_view kindName = "runThrough";
    static constexpr FactRole role = FactRole::elsewhere;
    static constexpr std::size_t mostStops = 999;

    Id piece;
    std::optional<Tempo> tempo; ///< of the click; none: without it
    std::int64_t millis = 0;
    bool finished = true;
    std::vector<Stop> stops; ///< in the order in which they were made
    bool operator==(const RunThroughFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, RunThroughFact& fact) {
    in.field("piece", fact.piece);
    ifKnown(in, "tempo", fact.tempo);
    in.field("ms", fact.millis, playingMillis);
    in.field("finished", fact.finished);
    unlessUsual(in, "stops", fact.stops, {}, Most{RunThroughFact::mostStops});
}

} // namespace piolo
