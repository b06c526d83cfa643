// SPDX-License-Identifier: GPL-3.0-or-later
// Sound out: a QAudioSink on a thread of its own, a watchdog, and a silent clock for when there is no device.
#pragma once

#include "engine/queue/renderer.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace piolo::device {

struct Output {
    std::string id;   ///< opaque; identifies the output to choose() and start()
    std::string name; ///< for display
};

/// The current state of sound output.
struct SoundState {
    enum class Kind { starting, playing, silent, needsRestart };
    Kind kind = Kind::starting;
    std::string deviceName;      ///< of the device in use; "" if silent
    std::int32_t rate = 0;       ///< of the device in use; 0 if silent
    std::uint64_t underruns = 0; ///< since start()
    bool operator==(const SoundState&) const = default;
};

/// The time base of audibleAt(): nanoseconds of the monotonic clock (std::chrono::steady_clock).
[[nodiscard]] std::int64_t monotonicNanos() noexcept;

/// Drives one Renderer. Window thread unless a function says otherwise; no function waits for the sound
/// thread without a time limit.
class SoundOut {
public:
    /// The renderer is shared, because it must outlive this object and any sound thread that had to be
    /// abandoned.
    explicit SoundOut(std::shared_ptr<engine::Renderer> renderer);
    ~SoundOut();
    SoundOut(const SoundOut&) = delete;
    SoundOut& operator=(const SoundOut&) = delete;

    /// Opens `deviceId` ("": the default). Without a device, the silent clock renders and discards at 48 kHz.
    void start(const std::string& deviceId);
    void stop();
    /// Switches to another device; a running drill continues at the next bar.
    void choose(const std::string& deviceId);
    /// Any thread. The sample (counted in rendered samples since the first start) that is audible at that
    /// moment, after subtracting the manual offset; never more than has been rendered.
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const noexcept;
    /// How much later sound is heard than the system reports, for example with wireless headphones: -500…1000
    /// ms.
    void setOffsetMillis(int millis);
    [[nodiscard]] SoundState state() const;
    /// `heard` is called on the window thread (through Qt's event loop) when state() has changed.
    void onChange(std::function<void()> heard);

    /// The outputs known so far. Starts a query on the sound thread but does not wait for it: call again a
    /// moment later.
    [[nodiscard]] static std::vector<Output> outputs();
    /// True if a sound thread hung inside the sound system and had to be abandoned. The sound system's own
    /// destructors may then hang too: after saving everything, end the program with std::quick_exit.
    [[nodiscard]] static bool threadsLeftBehind() noexcept;

private:
    struct Body;
    std::unique_ptr<Body> body_;
};

} // namespace piolo::device
