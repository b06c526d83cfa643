// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/event_sender.h"

namespace piolo::engine {

void EventSender::send(const Event& event) noexcept {
    flush();
    if (count_ == 0 && ring_.push(event)) return;
    if (count_ == backlog_.size()) return;
    backlog_[(first_ + count_) % backlog_.size()] = event;
    ++count_;
}

void EventSender::sendPulse(const Event& event) noexcept {
    flush();
    if (count_ == 0 && ring_.room() > keptForDeciding && ring_.push(event)) return;
    pulsesNotSent_.fetch_add(1, std::memory_order_relaxed);
}

void EventSender::flush() noexcept {
    while (count_ > 0 && ring_.push(backlog_[first_])) {
        first_ = (first_ + 1) % backlog_.size();
        --count_;
    }
}

} // namespace piolo::engine
