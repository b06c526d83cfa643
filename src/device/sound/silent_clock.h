// SPDX-License-Identifier: GPL-3.0-or-later
// Time goes on without a device: renders and discards, paced by the monotonic clock.
#pragma once

#include "device/sound/render_host.h"

#include <condition_variable>
#include <memory>
#include <mutex>
#include <thread>

namespace piolo::device {

/// Runs from construction to destruction, or until another takes the gate. Destruction waits for one block at
/// most.
class SilentClock {
public:
    explicit SilentClock(std::shared_ptr<RenderHost> stage);
    ~SilentClock();
    SilentClock(const SilentClock&) = delete;
    SilentClock& operator=(const SilentClock&) = delete;

    /// False once another has taken the gate: it will not render again.
    [[nodiscard]] bool current() const noexcept { return !host_->gate().overtaken(number_); }

private:
    void run();
    [[nodiscard]] bool sleep();

    std::shared_ptr<RenderHost> host_;
    RenderOwnership::Number number_;
    std::mutex mutex_;
    std::condition_variable wake_;
    bool over_ = false; // under mutex_
    std::thread thread_;
};

} // namespace piolo::device
