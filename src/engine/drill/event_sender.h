// SPDX-License-Identifier: GPL-3.0-or-later
// Sends events: pulses may be dropped if nobody reads, but never events that decide the mark of a run.
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
    /// Audio thread, real-time-safe. Sends in order; keeps events back while the queue is full. Do not call
    /// if isCrowded().
    void send(const Event& event) noexcept;
    /// Audio thread, real-time-safe. Drops and counts the pulse if the reader is far behind.
    void sendPulse(const Event& event) noexcept;
    /// Audio thread, real-time-safe. Moves events that were kept back into the queue.
    void flush() noexcept;
    /// Audio thread. True if the reader has stalled for so long that the drill must wait for it.
    [[nodiscard]] bool isCrowded() const noexcept { return count_ + margin > backlog_.size(); }
    /// Reader thread. Lock-free.
    bool read(Event& event) noexcept { return ring_.pop(event); }
    /// Any thread.
    [[nodiscard]] std::uint64_t pulsesNotSent() const noexcept {
        return pulsesNotSent_.load(std::memory_order_relaxed);
    }

private:
    static constexpr std::size_t keptForDeciding = 512; // slots that pulses leave free
    static constexpr std::size_t margin = 64;           // more events than the commands of one block can
                                                        // cause

    Ring<Event, 4096> ring_;
    std::array<Event, 512> backlog_{}; // a ring buffer; `first_` is the oldest
    std::size_t first_ = 0;
    std::size_t count_ = 0;
    std::atomic<std::uint64_t> pulsesNotSent_{0};
    static_assert(std::atomic<std::uint64_t>::is_always_lock_free);
};

} // namespace piolo::engine
