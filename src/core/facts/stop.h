// SPDX-License-Identifier: GPL-3.0-or-later
// Where a run-through came to a stop.
#pragma once

#include "core/base/fields.h"
#include "core/passage/piece.h"

#include <cstdint>

namespace piolo {

/// Where a run-through of a piece came to a stop.
struct Stop {
    std::int32_t bar = 1;    ///< 0: not known, up to Piece::mostBars
    std::int64_t millis = 0; ///< from the start
    bool operator==(const Stop&) const = default;
};

template <typename Fields>
void describeItems(Fields& in, Stop& stop) {
    in.item(stop.bar, Range{0, Piece::mostBars});
    in.item(stop.millis, playingMillis);
}

} // namespace piolo
