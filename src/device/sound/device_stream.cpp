// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/device_stream.h"

#include <utility>

namespace piolo::device {

DeviceStream::DeviceStream(const std::shared_ptr<RenderHost>& host, std::string deviceId)
    : deviceId_{std::move(deviceId)}, feed_{host, host->gate().allot()} {}

void DeviceStream::open(const SinkMaker& maker) {
    sink_ = maker();
    const auto underrun = [this] { underruns_.fetch_add(1, std::memory_order_relaxed); };
    opening_ = sink_->open(deviceId_, feed_, {underrun, [this] { become(Status::ended); }});
    if (opening_.kind == Opening::Kind::noServer) return become(Status::noServer);
    if (opening_.kind == Opening::Kind::noDevice) return become(Status::noDevice);
    if (opening_.kind == Opening::Kind::refused) return become(Status::refused);
    become(Status::proving);
}

void DeviceStream::take() {
    if (status() == Status::proving) become(feed_.take(opening_.rate) ? Status::playing : Status::ended);
}

void DeviceStream::close() {
    // Moved out first, because destroying a sink may run other work of this thread.
    auto sink = std::move(sink_);
    sink.reset();
    become(Status::closed);
}

void DeviceStream::become(Status status) noexcept {
    {
        const std::lock_guard lock{mutex_};
        if (status_.load(std::memory_order_relaxed) == Status::closed) return;
        status_.store(status, std::memory_order_release);
    }
    closed_.notify_all();
}

bool DeviceStream::waitClosed(std::chrono::milliseconds limit) const {
    std::unique_lock lock{mutex_};
    return closed_.wait_for(lock, limit, [this] { return status() == Status::closed; });
}

} // namespace piolo::device
