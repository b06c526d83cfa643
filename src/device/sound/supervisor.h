// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps time going: opens the device, watches it, lets the silent clock step in, tries again.
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

/// Belongs to the window's thread. Time is given, so that tests need not wait. Nothing here waits for the
/// sound thread without a bound.
class Supervisor {
public:
    /// `thread` must outlive this.
    Supervisor(std::shared_ptr<RenderHost> stage, SoundThread& thread, SinkMaker maker);
    ~Supervisor();
    Supervisor(const Supervisor&) = delete;
    Supervisor& operator=(const Supervisor&) = delete;

    void start(const std::string& deviceId, std::int64_t now);
    /// Changes over to `deviceId`.
    void choose(const std::string& deviceId, std::int64_t now);
    /// Nobody renders any more when this returns.
    void stop();
    /// To be called about twenty times a second: sees what became of the device and acts.
    void look(std::int64_t now);
    [[nodiscard]] SoundState state() const;
    /// True while the sound thread is at work on a device: opens it, or hands it the sound.
    [[nodiscard]] bool isOpening() const;

    static constexpr std::int64_t second = 1'000'000'000;
    /// Opening may take so long, and a device that has just been opened may be quiet so long.
    static constexpr std::int64_t openingLimit = 3 * second;
    /// A device that has asked for sound `coldFills` times may be quiet so long.
    static constexpr std::int64_t quietLimit = second;
    static constexpr std::uint64_t coldFills = 50;
    /// So often it must ask before it gets sound: more than its buffer holds, as a device that has stopped
    /// asks until that is full. Until then whoever rendered before goes on undisturbed.
    static constexpr std::uint64_t provenFills = 15;
    static constexpr std::int64_t retryAfterLoss = second;
    static constexpr std::int64_t retryWhenSilent = 2 * second;
    /// Where a server answers, a lost device comes back within this, or only a restart helps.
    static constexpr std::int64_t backWithin = 6 * second;
    /// So many threads are given up before the sound system is.
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
    bool proven_ = false; // the session was told to take
    bool needsRestart_ = false;
    int threadsGivenUp_ = 0;             // since sound last came through
    std::optional<std::int64_t> lostAt_; // when a device that played was lost, or no server answered last
    std::int64_t retryAt_ = 0;
    std::uint64_t pastUnderruns_ = 0; // of sessions that are over
};

} // namespace piolo::device
