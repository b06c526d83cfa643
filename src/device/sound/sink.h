// SPDX-License-Identifier: GPL-3.0-or-later
// The port to a sound device, so that the watchdog can be tested with devices that hang.
#pragma once

#include "device/sound/feed.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>

namespace piolo::device {

/// How an attempt to open a device ended.
struct Opening {
    /// noServer: nobody answers who could have a device.
    enum class Kind { opened, noServer, noDevice, refused };
    Kind kind = Kind::noDevice;
    std::string deviceName;
    std::int32_t rate = 0; ///< at which the device asks for frames
};

/// One open device. Made, used and destroyed on the sound thread; any call may hang there for good.
class Sink {
public:
    /// What a sink tells, on the sound thread.
    struct Ears {
        std::function<void()> underrun;
        std::function<void()> ended; ///< it will never ask again
    };
    Sink() = default;
    virtual ~Sink() = default;
    Sink(const Sink&) = delete;
    Sink& operator=(const Sink&) = delete;

    /// Opens `deviceId` ("" or one that is not there: the default) and starts to drink from `feed`, which
    /// outlives the sink.
    virtual Opening open(const std::string& deviceId, Feed& feed, Ears ears) = 0;
};

using SinkMaker = std::function<std::unique_ptr<Sink>()>;

} // namespace piolo::device
