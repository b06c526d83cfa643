// SPDX-License-Identifier: GPL-3.0-or-later
// Sound out: a QAudioSink on a thread of its own, a watchdog, and a silent clock for when there is no device.
#pragma once

#include "engine/queue/renderer.h"
#include "practice/ports/sound_port.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace piolo::device {

/// The time base of audibleAt(): nanoseconds of the monotonic clock (std::chrono::steady_clock).
[[nodiscard]] std::int64_t monotonicNanos() noexcept;

/// Drives one Renderer. Window thread unless a function says otherwise; no function waits for the sound
/// thread without a time limit.
class SoundOut final : public practice::SoundPort {
public:
    /// The renderer is shared, because it must outlive this object and any sound thread that had to be
    /// abandoned.
    explicit SoundOut(std::shared_ptr<engine::Renderer> renderer);
    ~SoundOut() override;
    SoundOut(const SoundOut&) = delete;
    SoundOut& operator=(const SoundOut&) = delete;

    /// Opens `deviceId` ("": the default). Without a device, the silent clock renders and discards at 48 kHz.
    void start(const std::string& deviceId) override;
    void stop();
    void choose(const std::string& deviceId) override;
    /// Any thread. The sample (counted in rendered samples since the first start) that is audible at that
    /// moment, after subtracting the manual offset; never more than has been rendered.
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const noexcept override;
    /// Any thread. monotonicNanos().
    [[nodiscard]] std::int64_t nowNanos() const noexcept override { return monotonicNanos(); }
    /// Any thread. Linux counts it in CLOCK_BOOTTIME, but not in CLOCK_MONOTONIC (clock_gettime(2)).
    [[nodiscard]] std::int64_t sleptNanos() const noexcept override;
    void setOffsetMillis(int millis) override;
    [[nodiscard]] practice::SoundState state() const override;
    /// `heard` is called through Qt's event loop.
    void onChange(std::function<void()> heard) override;
    /// Starts a query on the sound thread but does not wait for it.
    [[nodiscard]] std::vector<practice::SoundOutput> outputs() const override;
    /// Main thread, when no SoundOut is left and before exit handlers run: ends the process's sound thread,
    /// or abandons it if that takes over a second.
    static void endThread();
    /// True if a sound thread hung inside the sound system and had to be abandoned. It may use what exit
    /// handlers destroy, and the sound system's own destructors may hang, too: after saving everything, end
    /// the program with std::quick_exit.
    [[nodiscard]] static bool threadsLeftBehind() noexcept;

private:
    struct Body;
    std::unique_ptr<Body> body_;
};

} // namespace piolo::device
