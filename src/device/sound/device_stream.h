// SPDX-License-Identifier: GPL-3.0-or-later
// One attempt to play through a device, from opening it to closing it.
#pragma once

#include "device/sound/sink.h"

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <string>

namespace piolo::device {

/// Shared by the window's thread, which watches, and the sound thread, which opens and closes. If the sound
/// thread hangs inside it, it is left to that thread.
class DeviceStream {
public:
    /// proving: it gets silence until it has shown that it drinks.
    enum class Status { opening, proving, playing, noServer, noDevice, refused, ended, closed };

    DeviceStream(const std::shared_ptr<RenderHost>& stage, std::string deviceId);

    /// Sound thread.
    void open(const SinkMaker& maker);
    /// Sound thread. The device has proved itself: it gets sound from now on.
    void take();
    /// Sound thread. Destroys the sink.
    void close();

    /// Any thread.
    [[nodiscard]] Status status() const noexcept { return status_.load(std::memory_order_acquire); }
    [[nodiscard]] std::uint64_t fills() const noexcept { return feed_.fills(); }
    [[nodiscard]] std::uint64_t underruns() const noexcept {
        return underruns_.load(std::memory_order_relaxed);
    }
    /// Any thread, once status() is not opening any more. What it opened with.
    [[nodiscard]] const Opening& opening() const noexcept { return opening_; }
    /// Any other thread. True when closed within that time.
    [[nodiscard]] bool waitClosed(std::chrono::milliseconds limit) const;

private:
    void become(Status status) noexcept;

    std::string deviceId_;
    Feed feed_;
    std::unique_ptr<Sink> sink_; // sound thread's
    Opening opening_;            // written before status_ leaves opening
    std::atomic<Status> status_{Status::opening};
    std::atomic<std::uint64_t> underruns_{0};
    mutable std::mutex mutex_;
    mutable std::condition_variable closed_;
};

} // namespace piolo::device
