// SPDX-License-Identifier: GPL-3.0-or-later
// Where a miss was marked.
#pragma once

#include "core/base/fields.h"

#include <cstdint>

namespace piolo {

/// Where in the part a miss was marked: the part's own bar number (a pick-up is firstBar - 1), the beat
/// from 1, and how much of that beat had gone by.
struct Spot {
    static constexpr std::int32_t firstBar = -1;
    static constexpr std::int32_t lastBar = 999'999; ///< an open-ended run goes on as long as it likes
    static constexpr std::int32_t lastBeat = 32;
    static constexpr std::int32_t mostPart = 999;

    std::int32_t bar = 0;
    std::int32_t beat = 0;
    std::int32_t part = 0; ///< thousandths of the beat, 0…999
    bool operator==(const Spot&) const = default;
};

template <typename Fields>
void describeItems(Fields& in, Spot& spot) {
    in.item(spot.bar, Range{Spot::firstBar, Spot::lastBar});
    in.item(spot.beat, Range{1, Spot::lastBeat});
    in.lastItem(spot.part, Range{0, Spot::mostPart}, 0);
}

} // namespace piolo
