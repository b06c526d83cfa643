// SPDX-License-Identifier: GPL-3.0-or-later
// Where a run waits, in ticks: the bars stand still while time goes on.
#pragma once

#include "core/passage/click_pattern.h"

#include <array>
#include <cstddef>
#include <cstdint>

namespace piolo::engine {

/// A wait of `ticks` before the place `at`, counted in the bars.
struct Wait {
    std::uint64_t at = 0;
    std::uint64_t ticks = 0;
};

/// The waits of one run, in their order. Real-time-safe.
class Waits {
public:
    /// Where a run stands.
    struct Stand {
        std::uint64_t place = 0; ///< in the bars; while it waits, the place before which it does
        bool waits = false;
    };

    /// One too many is left out.
    void add(Wait wait) noexcept;
    [[nodiscard]] bool none() const noexcept { return count_ == 0; }
    /// Of all waits together.
    [[nodiscard]] std::uint64_t total() const noexcept { return before(UINT64_MAX); }
    /// Of the waits up to `place`, one before the place itself included.
    [[nodiscard]] std::uint64_t before(std::uint64_t place) const noexcept;
    /// After `ticks` of bars and waits together.
    [[nodiscard]] Stand after(std::uint64_t ticks) const noexcept;

private:
    std::array<Wait, ClickPattern::mostBreaths> waits_{};
    std::size_t count_ = 0;
};

} // namespace piolo::engine
