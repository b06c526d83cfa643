// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps time without a device: renders and discards, paced by the monotonic clock.
#pragma once

#include "device/sound/render_host.h"

#include <condition_variable>
#include <memory>
#include <mutex>
#include <thread>

namespace piolo::device {

/// Runs from construction until destruction, or until another number claims the render ownership. Destruction
/// waits for at most one block.
class SilentClock {
public:
    explicit SilentClock(std::shared_ptr<RenderHost> host);
    ~SilentClock();
    SilentClock(const SilentClock&) = delete;
    SilentClock& operator=(const SilentClock&) = delete;

    /// False once another number has claimed the ownership: this clock will not render again.
    [[nodiscard]] bool current() const noexcept { return !host_->gate().overtaken(number_); }

private:
    void run();
    [[nodiscard]] bool sleep();

    std::shared_ptr<RenderHost> host_;
    RenderOwnership::Number number_;
    std::mutex mutex_;
    std::condition_variable wake_;
    bool over_ = false; // guarded by mutex_
    std::thread thread_;
};

} // namespace piolo::device
