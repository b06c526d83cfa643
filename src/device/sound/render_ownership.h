// SPDX-License-Identifier: GPL-3.0-or-later
// Who may render: at most one thread at a time, and never again a thread that was overtaken.
#pragma once

#include <atomic>
#include <cstdint>

namespace piolo::device {

/// Numbers are allotted once each; the gate belongs to the highest number that claimed it. A holder that was
/// overtaken while inside finishes its turn, and until then the new holder stays outside. Any thread;
/// lock-free and real-time-safe.
class RenderOwnership {
public:
    using Number = std::uint64_t;

    /// A number above all that were allotted before.
    [[nodiscard]] Number allot() noexcept { return next_.fetch_add(1, std::memory_order_relaxed); }
    /// Makes the gate `number`'s own. False when a later number has claimed it.
    bool claim(Number number) noexcept;
    [[nodiscard]] bool holds(Number number) const noexcept {
        return (word_.load(std::memory_order_acquire) >> 1) == number;
    }
    /// True when a later number has claimed: `number` will never be inside again.
    [[nodiscard]] bool overtaken(Number number) const noexcept {
        return (word_.load(std::memory_order_acquire) >> 1) > number;
    }
    /// True while somebody is inside.
    [[nodiscard]] bool busy() const noexcept { return (word_.load(std::memory_order_acquire) & inside) != 0; }
    /// True: `number` is inside until leave(). False: it was overtaken, or the one before has not left yet.
    [[nodiscard]] bool enter(Number number) noexcept;
    void leave() noexcept { word_.fetch_and(~inside, std::memory_order_release); }

private:
    static constexpr std::uint64_t inside = 1;
    static_assert(std::atomic<std::uint64_t>::is_always_lock_free);

    std::atomic<Number> next_{1};
    std::atomic<std::uint64_t> word_{0}; // the holder's number, then one bit: somebody is inside
};

/// One stay inside the gate.
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
