// SPDX-License-Identifier: GPL-3.0-or-later
// The way out for events: pulses may be left out when nobody reads, what decides a run's mark never is.
#pragma once

#include "engine/queue/event.h"
#include "engine/queue/ring.h"

#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>

namespace piolo::engine {

class EventSender {
public:
    /// Audio thread, real-time-safe. Told in order; kept back here while the queue is full. Not when
    /// isCrowded().
    void tell(const Event& event) noexcept;
    /// Audio thread, real-time-safe. Left out and counted when the reader is far behind.
    void tellPulse(const Event& event) noexcept;
    /// Audio thread, real-time-safe. Moves what was kept back into the queue.
    void flush() noexcept;
    /// Audio thread. The reader has stalled for so long that the drill must wait for it.
    [[nodiscard]] bool isCrowded() const noexcept { return count_ + margin > backlog_.size(); }
    /// Reader's thread. Lock-free.
    bool read(Event& event) noexcept { return ring_.pop(event); }
    /// Any thread.
    [[nodiscard]] std::uint64_t pulsesNotTold() const noexcept {
        return pulsesNotTold_.load(std::memory_order_relaxed);
    }

private:
    static constexpr std::size_t keptForDeciding = 512; // places that pulses leave free
    static constexpr std::size_t margin = 64;           // more than one block's commands can cause

    Ring<Event, 4096> ring_;
    std::array<Event, 512> backlog_{}; // a ring: `first_` is the oldest
    std::size_t first_ = 0;
    std::size_t count_ = 0;
    std::atomic<std::uint64_t> pulsesNotTold_{0};
    static_assert(std::atomic<std::uint64_t>::is_always_lock_free);
};

} // namespace piolo::engine
