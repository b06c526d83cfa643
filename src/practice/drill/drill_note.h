// SPDX-License-Identifier: GPL-3.0-or-later
// What the engine decided, with its two moments and the fact that came of it.
#pragma once

#include "core/history/fact.h"
#include "engine/queue/event.h"

#include <cstdint>
#include <optional>

namespace piolo::practice {

/// Plain values. Notes come in the order in which the engine decided.
struct DrillNote {
    engine::Event event;
    /// When it was decided: when the reader came upon it, on the port's monotonic clock.
    std::int64_t decidedNanos = 0;
    /// It was handed to the disk already; the window folds it.
    std::optional<Fact> fact;

    /// When it can be heard, in the engine's count of samples: a little after it was decided.
    [[nodiscard]] std::uint64_t audibleFrom() const { return event.sample; }
};

} // namespace piolo::practice
