// SPDX-License-Identifier: GPL-3.0-or-later
// The port to a sound device, which lets tests use devices that hang.
#pragma once

#include "device/sound/feed.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>

namespace piolo::device {

/// The result of opening a device.
struct Opening {
    /// noServer: no sound server answers that could offer a device.
    enum class Kind { opened, noServer, noDevice, refused };
    Kind kind = Kind::noDevice;
    std::string deviceName;
    std::int32_t rate = 0; ///< the rate at which the device asks for frames
};

/// One open device. Created, used and destroyed on the sound thread; any call may hang there forever.
class Sink {
public:
    /// What a sink reports, on the sound thread.
    struct Ears {
        std::function<void()> underrun;
        std::function<void()> ended; ///< it will never ask for samples again
    };
    Sink() = default;
    virtual ~Sink() = default;
    Sink(const Sink&) = delete;
    Sink& operator=(const Sink&) = delete;

    /// Opens `deviceId` (the default device if it is "" or not available) and starts to read from `feed`,
    /// which must outlive the sink.
    virtual Opening open(const std::string& deviceId, Feed& feed, Ears ears) = 0;
};

using SinkMaker = std::function<std::unique_ptr<Sink>()>;

} // namespace piolo::device
