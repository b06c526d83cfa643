// SPDX-License-Identifier: GPL-3.0-or-later
// What the engine decided, with its two times and the fact that resulted.
#pragma once

#include "core/history/fact.h"
#include "engine/queue/event.h"

#include <cstdint>
#include <optional>

namespace piolo::practice {

/// Plain values, in the order of the engine's decisions.
struct DrillNote {
    engine::Event event;
    /// When it was decided: when the reader found it, on the port's monotonic clock.
    std::int64_t decidedNanos = 0;
    /// Already passed on to be written; the window folds it.
    std::optional<Fact> fact;

    /// When it is audible, in the engine's sample count: a little after it was decided.
    [[nodiscard]] std::uint64_t audibleFrom() const { return event.sample; }
};

} // namespace piolo::practice
