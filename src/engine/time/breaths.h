// SPDX-License-Identifier: GPL-3.0-or-later
// The places of a run before which the click waits, so that the player can breathe.
#pragma once

#include "core/passage/click_pattern.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// Breath places by bar of the run, from 0 (a pick-up is bar -1), and beat, from 0. In their order.
/// Real-time-safe.
struct Breaths {
    std::array<BreathPlace, ClickPattern::mostBreaths> places{};
    std::size_t count = 0;
    Tempo below = Tempo::bpm(400); ///< at this tempo and above, no place waits

    /// `firstBar`: the part's own number of the run's bar 0.
    static Breaths of(const ClickPattern& pattern, std::int32_t firstBar) noexcept;
    /// With every value inside its range; places out of their order are left out.
    [[nodiscard]] Breaths inRange() const noexcept;
    /// The beats of waiting inside bars 0 to `bars` - 1 at `tempo`; before the very first beat nobody waits.
    [[nodiscard]] std::int64_t beatsIn(std::int64_t bars, std::int32_t beatsPerBar,
                                       Tempo tempo) const noexcept;
};
static_assert(std::is_trivially_copyable_v<Breaths>);

} // namespace piolo::engine
