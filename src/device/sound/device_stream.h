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

/// Shared by the window thread, which watches it, and the sound thread, which opens and closes it. If the
/// sound thread hangs in it, it stays with that thread.
class DeviceStream {
public:
    /// proving: the device gets silence until it has shown that it keeps asking for samples.
    enum class Status { opening, proving, playing, noServer, noDevice, refused, ended, closed };

    DeviceStream(const std::shared_ptr<RenderHost>& host, std::string deviceId);

    /// Sound thread. The device had an underrun.
    void open(const SinkMaker& maker);
    /// Sound thread. The device has proved itself and gets sound from now on.
    void take();
    /// Sound thread. Destroys the sink.
    void close();

    /// Any thread.
    [[nodiscard]] Status status() const noexcept { return status_.load(std::memory_order_acquire); }
    [[nodiscard]] std::uint64_t fills() const noexcept { return feed_.fills(); }
    [[nodiscard]] std::uint64_t underruns() const noexcept {
        return underruns_.load(std::memory_order_relaxed);
    }
    /// Any thread, once status() is no longer `opening`. The result of opening the device.
    [[nodiscard]] const Opening& opening() const noexcept { return opening_; }
    /// Any thread but the sound thread. True if closed within `limit`.
    [[nodiscard]] bool waitClosed(std::chrono::milliseconds limit) const;

private:
    void become(Status status) noexcept;

    std::string deviceId_;
    Feed feed_;
    std::unique_ptr<Sink> sink_; // sound thread only
    Opening opening_;            // written before status_ leaves `opening`
    std::atomic<Status> status_{Status::opening};
    std::atomic<std::uint64_t> underruns_{0};
    mutable std::mutex mutex_;
    mutable std::condition_variable closed_;
};

} // namespace piolo::device
