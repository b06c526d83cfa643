// SPDX-License-Identifier: GPL-3.0-or-later
// The source of a device's samples: always full, with sound while the device holds the render ownership and
// silence otherwise.
#pragma once

#include "device/sound/render_host.h"

#include <atomic>
#include <cstdint>
#include <memory>
#include <span>

namespace piolo::device {

/// Connects one device to the render host. Only the sound thread calls fill().
class Feed {
public:
    Feed(std::shared_ptr<RenderHost> host, RenderOwnership::Number number)
        : host_{std::move(host)}, number_{number} {}

    /// Fills all of `out`. Real-time-safe.
    void fill(std::span<float> out) noexcept;
    /// Any thread. How often fill() has been called: the sign of life for the watchdog.
    [[nodiscard]] std::uint64_t fills() const noexcept { return fills_.load(std::memory_order_relaxed); }
    /// Sound thread. The device has played `micros` microseconds of what it was given.
    void played(std::int64_t nanos, std::int64_t micros, std::int32_t rate) noexcept;
    /// Sound thread. The device had an underrun.
    void ranDry(std::int64_t nanos) noexcept { host_->ranDry(number_, nanos); }
    /// Sound thread. Takes the render ownership; see RenderHost::take().
    bool take(std::int32_t rate) { return host_->take(number_, rate); }

private:
    std::shared_ptr<RenderHost> host_;
    RenderOwnership::Number number_;
    std::uint64_t frames_ = 0; // given to the device, including silence
    std::atomic<std::uint64_t> fills_{0};
};

} // namespace piolo::device
