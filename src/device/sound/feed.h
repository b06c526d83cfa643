// SPDX-License-Identifier: GPL-3.0-or-later
// What a device drinks from: always full, sound while it is its turn and silence when not.
#pragma once

#include "device/sound/render_host.h"

#include <atomic>
#include <cstdint>
#include <memory>
#include <span>

namespace piolo::device {

/// One device's share in the stage. fill() belongs to the sound thread.
class Feed {
public:
    Feed(std::shared_ptr<RenderHost> stage, RenderOwnership::Number number)
        : host_{std::move(stage)}, number_{number} {}

    /// Fills all of `out`. Real-time-safe.
    void fill(std::span<float> out) noexcept;
    /// Any thread. How often fill() was called: the watchdog's sign of life.
    [[nodiscard]] std::uint64_t fills() const noexcept { return fills_.load(std::memory_order_relaxed); }
    /// Sound thread. The device has played `micros` of what it was given.
    void played(std::int64_t nanos, std::int64_t micros, std::int32_t rate) noexcept;
    /// Sound thread.
    void ranDry(std::int64_t nanos) noexcept { host_->ranDry(number_, nanos); }
    /// Sound thread. Becomes the one that renders; see RenderHost::take().
    bool take(std::int32_t rate) { return host_->take(number_, rate); }

private:
    std::shared_ptr<RenderHost> host_;
    RenderOwnership::Number number_;
    std::uint64_t frames_ = 0; // given to the device, silence included
    std::atomic<std::uint64_t> fills_{0};
};

} // namespace piolo::device
