// SPDX-License-Identifier: GPL-3.0-or-later
// Who may render: at most one thread at a time, and never again a thread that has been superseded.
#pragma once

#include <atomic>
#include <cstdint>

namespace piolo::device {

/// Each number is allotted once; the ownership belongs to the highest number that has claimed it. A holder
/// that is superseded during its turn finishes that turn; until then the new holder cannot enter. Any thread;
/// lock-free and real-time-safe.
class RenderOwnership {
public:
    using Number = std::uint64_t;

    /// A number higher than all allotted before.
    [[nodiscard]] Number allot() noexcept { return next_.fetch_add(1, std::memory_order_relaxed); }
    /// Gives the ownership to `number`. False if a later number has claimed it.
    bool claim(Number number) noexcept;
    [[nodiscard]] bool holds(Number number) const noexcept {
        return (word_.load(std::memory_order_acquire) >> 1) == number;
    }
    /// True if a later number has claimed the ownership: `number` will never get a turn again.
    [[nodiscard]] bool overtaken(Number number) const noexcept {
        return (word_.load(std::memory_order_acquire) >> 1) > number;
    }
    /// True while any holder is inside a turn.
    [[nodiscard]] bool busy() const noexcept { return (word_.load(std::memory_order_acquire) & inside) != 0; }
    /// True: `number` is inside until leave(). False: it was superseded, or the previous holder has not left
    /// yet.
    [[nodiscard]] bool enter(Number number) noexcept;
    void leave() noexcept { word_.fetch_and(~inside, std::memory_order_release); }

private:
    static constexpr std::uint64_t inside = 1;
    static_assert(std::atomic<std::uint64_t>::is_always_lock_free);

    std::atomic<Number> next_{1};
    std::atomic<std::uint64_t> word_{0}; // the holder's number, then one bit: a turn is in progress
};

/// Enters the ownership for the lifetime of this object, if possible.
class Turn {
public:
    Turn(RenderOwnership& gate, RenderOwnership::Number number) noexcept
        : ownership_{gate}, inside_{gate.enter(number)} {}
    ~Turn() {
        if (inside_) ownership_.leave();
    }
    Turn(const Turn&) = delete;
    Turn& operator=(const Turn&) = delete;
    explicit operator bool() const noexcept { return inside_; }

private:
    RenderOwnership& ownership_;
    bool inside_;
};

} // namespace piolo::device
