// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps time running: opens the device, watches it, falls back to the silent clock, and tries again.
#pragma once

#include "device/sound/device_stream.h"
#include "device/sound/silent_clock.h"
#include "device/sound/sound_out.h"
#include "device/sound/sound_thread.h"
#include "device/sound/watchdog.h"

#include <memory>
#include <optional>
#include <string>

namespace piolo::device {

/// Window thread. Callers pass the time, so that tests need not wait. Never waits for the sound thread
/// without a time limit.
class Supervisor {
public:
    /// `thread` must outlive this.
    Supervisor(std::shared_ptr<RenderHost> host, SoundThread& thread, SinkMaker maker);
    ~Supervisor();
    Supervisor(const Supervisor&) = delete;
    Supervisor& operator=(const Supervisor&) = delete;

    void start(const std::string& deviceId, std::int64_t now);
    /// Switches to `deviceId`.
    void choose(const std::string& deviceId, std::int64_t now);
    /// After this returns, nothing renders any more.
    void stop();
    /// Call this about twenty times a second: checks the state of the device and acts on it.
    void look(std::int64_t now);
    [[nodiscard]] practice::SoundState state() const;
    /// True while the sound thread is opening a device or handing over the sound to it.
    [[nodiscard]] bool isOpening() const;

    static constexpr std::int64_t second = 1'000'000'000;
    /// How long opening may take, and how long a device that was just opened may be quiet.
    static constexpr std::int64_t openingLimit = 3 * second;
    /// How long a device may be quiet once it has asked for samples `coldFills` times.
    static constexpr std::int64_t quietLimit = second;
    static constexpr std::uint64_t coldFills = 50;
    /// How often a device must ask for samples before it gets sound: more often than it takes to fill its
    /// buffer, because a stopped device asks until its buffer is full. Until then, the previous holder
    /// renders on.
    static constexpr std::uint64_t provenFills = 15;
    static constexpr std::int64_t retryAfterLoss = second;
    static constexpr std::int64_t retryWhenSilent = 2 * second;
    /// If a server answers, a lost device comes back within this time or needs a restart of the program.
    static constexpr std::int64_t backWithin = 6 * second;
    /// How many threads are abandoned before giving up on the sound system.
    static constexpr int threadLimit = 3;

private:
    void open(std::int64_t now);
    void close();
    void goSilent(std::int64_t retryAt);
    void lookAtSession(std::int64_t now);
    void lookAtProving(std::int64_t now);
    void lookAtPlaying(std::int64_t now);
    void refused(std::int64_t now);
    void lose(std::int64_t now);
    void giveUpThread(std::int64_t now);
    void cutOff();

    std::shared_ptr<RenderHost> host_;
    SoundThread& thread_;
    SinkMaker maker_;
    std::string deviceId_;
    std::shared_ptr<DeviceStream> stream_;
    std::optional<SilentClock> silence_;
    Watchdog watchdog_;
    bool running_ = false;
    bool proven_ = false; // the stream has been asked to take over the sound
    bool needsRestart_ = false;
    int threadsGivenUp_ = 0;             // since sound last played
    std::optional<std::int64_t> lostAt_; // when a playing device was lost, or when a server last failed to
                                         // answer
    std::int64_t retryAt_ = 0;
    std::uint64_t pastUnderruns_ = 0; // of earlier streams
};

} // namespace piolo::device
