// SPDX-License-Identifier: GPL-3.0-or-later
// All that the engine needs to click without a passage: a plain value, copied between threads.
#pragma once

#include "core/time/meter.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// The fields are those of DrillPlan.
struct ClickPlan {
    Tempo tempo = Tempo::bpm(60);
    std::int32_t beatsPerBar = 4;
    std::uint32_t groupStarts = 1;
    std::int32_t subdivision = 1;
    bool operator==(const ClickPlan&) const = default;
};
static_assert(std::is_trivially_copyable_v<ClickPlan>);

[[nodiscard]] inline ClickPlan clickPlanOf(const Meter& meter, std::int32_t subdivision, Tempo tempo) {
    return {tempo, meter.beatsPerBar(), meter.groupStarts(), subdivision};
}

} // namespace piolo::engine
