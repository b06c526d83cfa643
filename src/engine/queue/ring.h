// SPDX-License-Identifier: GPL-3.0-or-later
// A fixed single-producer single-consumer queue of plain values.
#pragma once

#include <array>
#include <atomic>
#include <cstddef>
#include <type_traits>

namespace piolo::engine {

/// Holds up to Capacity - 1 values. One thread pushes, one thread pops; both are lock-free and
/// real-time-safe.
template <typename T, std::size_t Capacity>
class Ring {
    static_assert(std::is_trivially_copyable_v<T>);
    static_assert((Capacity & (Capacity - 1)) == 0, "a power of two");
    static_assert(std::atomic<std::size_t>::is_always_lock_free);

public:
    /// Producer. False if full; nothing is stored.
    bool push(const T& value) noexcept {
        const auto tail = tail_.load(std::memory_order_relaxed);
        const auto next = (tail + 1) & (Capacity - 1);
        if (next == head_.load(std::memory_order_acquire)) return false;
        slots_[tail] = value;
        tail_.store(next, std::memory_order_release);
        return true;
    }
    /// Consumer. False if empty.
    bool pop(T& value) noexcept {
        const auto head = head_.load(std::memory_order_relaxed);
        if (head == tail_.load(std::memory_order_acquire)) return false;
        value = slots_[head];
        head_.store((head + 1) & (Capacity - 1), std::memory_order_release);
        return true;
    }
    /// Producer. How many more values fit.
    [[nodiscard]] std::size_t room() const noexcept {
        const auto used =
            (tail_.load(std::memory_order_relaxed) - head_.load(std::memory_order_acquire)) & (Capacity - 1);
        return Capacity - 1 - used;
    }

private:
    alignas(64) std::atomic<std::size_t> head_{0}; // consumer only
    alignas(64) std::atomic<std::size_t> tail_{0}; // producer only
    alignas(64) std::array<T, Capacity> slots_{};
};

} // namespace piolo::engine
