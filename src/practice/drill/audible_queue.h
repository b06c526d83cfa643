// SPDX-License-Identifier: GPL-3.0-or-later
// Events on their way from the reader to the screen, held back until they can be heard.
#pragma once

#include "engine/queue/event.h"

#include <cstddef>
#include <cstdint>
#include <deque>
#include <mutex>

namespace piolo::practice {

/// One thread pushes, one takes; a lock is held for a few instructions. Never touched by the audio thread.
class AudibleQueue {
public:
    /// When nobody takes, the oldest event makes room after this many.
    static constexpr std::size_t most = 4096;

    void push(const engine::Event& event) {
        const std::lock_guard lock(mutex_);
        if (events_.size() == most) events_.pop_front();
        events_.push_back(event);
    }
    /// False when the next event is not audible yet at `sample`, or there is none.
    bool takeUntil(std::uint64_t sample, engine::Event& event) {
        const std::lock_guard lock(mutex_);
        if (events_.empty() || events_.front().sample > sample) return false;
        event = events_.front();
        events_.pop_front();
        return true;
    }

    /// What is left will not be taken.
    void clear() {
        const std::lock_guard lock(mutex_);
        events_.clear();
    }

private:
    std::mutex mutex_;
    std::deque<engine::Event> events_;
};

} // namespace piolo::practice
