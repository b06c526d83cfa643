// SPDX-License-Identifier: GPL-3.0-or-later
// Where a run waits, in ticks: the bars stop while time continues.
#pragma once

#include "core/passage/click_pattern.h"

#include <array>
#include <cstddef>
#include <cstdint>

namespace piolo::engine {

/// A wait of `ticks` before position `at` in the bars.
struct Wait {
    std::uint64_t at = 0;
    std::uint64_t ticks = 0;
};

/// The waits of one run, in order. Real-time-safe.
class Waits {
public:
    /// A run's position.
    struct Stand {
        std::uint64_t place = 0; ///< in the bars; during a wait, the position that it precedes
        bool waits = false;
    };

    /// If full, further waits are dropped.
    void add(Wait wait) noexcept;
    [[nodiscard]] bool none() const noexcept { return count_ == 0; }
    /// The total length of all waits.
    [[nodiscard]] std::uint64_t total() const noexcept { return before(UINT64_MAX); }
    /// The length of the waits up to `place`, including one right before it.
    [[nodiscard]] std::uint64_t before(std::uint64_t place) const noexcept;
    /// The position after `ticks` of bars and waits together.
    [[nodiscard]] Stand after(std::uint64_t ticks) const noexcept;

private:
    std::array<Wait, ClickPattern::mostBreaths> waits_{};
    std::size_t count_ = 0;
};

} // namespace piolo::engine
