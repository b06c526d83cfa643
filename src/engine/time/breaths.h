// SPDX-License-Identifier: GPL-3.0-or-later
// The places of a run before which the click waits for the player to breathe.
#pragma once

#include "core/passage/click_pattern.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// Breath places in order, by bar of the run (counted from 0; a pick-up is bar -1) and beat (counted from 0).
/// Real-time-safe.
struct Breaths {
    std::array<BreathPlace, ClickPattern::mostBreaths> places{};
    std::size_t count = 0;
    Tempo below = Tempo::bpm(400); ///< from this tempo on, there are no waits

    /// `firstBar`: the number in the part of the run's bar 0.
    static Breaths of(const ClickPattern& pattern, std::int32_t firstBar) noexcept;
    /// With every value limited to its range; places out of order are left out.
    [[nodiscard]] Breaths inRange() const noexcept;
    /// The beats of waiting in bars 0 to `bars` - 1 at `tempo`; there is no wait before the very first beat.
    [[nodiscard]] std::int64_t beatsIn(std::int64_t bars, std::int32_t beatsPerBar,
                                       Tempo tempo) const noexcept;
};
static_assert(std::is_trivially_copyable_v<Breaths>);

} // namespace piolo::engine
