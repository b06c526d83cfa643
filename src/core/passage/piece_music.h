// SPDX-License-Identifier: GPL-3.0-or-later
// How a whole piece goes.
#pragma once

#include "core/base/fields.h"
#include "core/time/meter.h"
#include "core/time/tempo.h"

#include <optional>

namespace piolo {

/// How a whole piece goes.
struct PieceMusic {
    Meter meter;
    std::optional<Tempo> tempo{}; ///< of the meter's beat; none: not known
    bool operator==(const PieceMusic&) const = default;
};

template <typename Fields>
void describe(Fields& in, PieceMusic& music) {
    describe(in, music.meter);
    ifKnown(in, "tempo", music.tempo);
}

} // namespace piolo
