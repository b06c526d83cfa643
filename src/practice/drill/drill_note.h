// SPDX-License-Identifier: GPL-3.0-or-later
// What the window hears of the drill: an event, and the fact that came of it.
#pragma once

#include "core/history/fact.h"
#include "engine/queue/event.h"

#include <optional>

namespace piolo::practice {

/// `fact` was handed to the disk already; the window folds it.
struct DrillNote {
    engine::Event event;
    std::optional<Fact> fact;
};

} // namespace piolo::practice
