// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/feed.h"

namespace piolo::device {

void Feed::fill(std::span<float> out) noexcept {
    host_->render(number_, out);
    frames_ += out.size();
    fills_.fetch_add(1, std::memory_order_relaxed);
}

void Feed::played(std::int64_t nanos, std::int64_t micros, std::int32_t rate) noexcept {
    const auto frames = static_cast<double>(micros) * rate / 1e6;
    host_->measure(number_, nanos, static_cast<double>(frames_) - frames);
}

} // namespace piolo::device
