// SPDX-License-Identifier: GPL-3.0-or-later
// Where a passage is on its way.
#pragma once

#include "core/time/tempo.h"

#include <cstdint>

namespace piolo {

/// The current tempo and streak of a passage.
struct Standing {
    Tempo tempo = Tempo::bpm(60);
    std::int32_t streak = 0;
    bool spared = false; ///< the last run was a miss at the target that did not drop (gentle rules only)
    constexpr bool operator==(const Standing&) const noexcept = default;
};

} // namespace piolo
