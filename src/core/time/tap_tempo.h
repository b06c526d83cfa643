// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo of taps: moments in, tempo out. docs/click.md has the rule.
#pragma once

#include "core/time/tempo.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>

namespace piolo {

/// Plain values, no clock. Real-time-safe.
class TapTempo {
public:
    /// A longer silence before a tap begins a new count.
    static constexpr std::int64_t longestPause = 2'000'000'000;
    /// Older taps no longer count.
    static constexpr std::size_t mostTaps = 9;

    /// A tap at `nanos` of any clock that does not run backwards. A tap that is not later than the last one
    /// is ignored.
    void tap(std::int64_t nanos) noexcept;
    /// Begins a new count.
    void forget() noexcept { count_ = 0; }
    /// How many taps the tempo is taken from.
    [[nodiscard]] std::size_t taps() const noexcept { return count_; }
    /// To the nearest whole beat per minute, 10 to 400; nothing before the second tap.
    [[nodiscard]] std::optional<Tempo> tempo() const noexcept;

private:
    [[nodiscard]] bool changed() const noexcept;
    void keep(std::size_t latest) noexcept;

    std::array<std::int64_t, mostTaps> moments_{};
    std::size_t count_ = 0;
};

} // namespace piolo
