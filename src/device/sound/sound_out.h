// SPDX-License-Identifier: GPL-3.0-or-later
// Sound out: a QAudioSink that lives on a thread of its own, a watchdog, and a silent clock for when there is
// none.
#pragma once

#include "engine/queue/renderer.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace piolo::device {

struct Output {
    std::string id;   ///< opaque, for choosing it again
    std::string name; ///< for people
};

/// How the sound is doing.
struct SoundState {
    enum class Kind { starting, playing, silent, needsRestart };
    Kind kind = Kind::starting;
    std::string deviceName;      ///< of the device in use, "" when silent
    std::int32_t rate = 0;       ///< of the device in use, 0 when silent
    std::uint64_t underruns = 0; ///< since start()
    bool operator==(const SoundState&) const = default;
};

/// Nanoseconds of the monotonic clock that audibleAt() speaks of (std::chrono::steady_clock).
[[nodiscard]] std::int64_t monotonicNanos() noexcept;

/// Drives one Renderer. Functions belong to the window's thread unless they say otherwise; none waits without
/// a bound for the sound thread.
class SoundOut {
public:
    /// `renderer` must outlive this, and outlive a sound thread that had to be abandoned: it is shared.
    explicit SoundOut(std::shared_ptr<engine::Renderer> renderer);
    ~SoundOut();
    SoundOut(const SoundOut&) = delete;
    SoundOut& operator=(const SoundOut&) = delete;

    /// Opens `deviceId` ("": the default). Without a device the silent clock renders and discards, at 48 kHz.
    void start(const std::string& deviceId);
    void stop();
    /// Changes the device; what runs goes on at the next bar.
    void choose(const std::string& deviceId);
    /// Any thread. The sample (in rendered samples since the first start) that is audible at that moment, the
    /// manual offset taken off; never more than has been rendered.
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const noexcept;
    /// How much later sound is heard than the system says, for wireless headphones: -500…1000 ms.
    void setOffsetMillis(int millis);
    [[nodiscard]] SoundState state() const;
    /// Called on the window's thread (through Qt's event loop) when state() changed.
    void onChange(std::function<void()> heard);

    /// The outputs known so far; asks the sound thread for what there is now and does not wait for it: look
    /// again a moment later.
    [[nodiscard]] static std::vector<Output> outputs();
    /// True when a sound thread hung inside the sound system and had to be abandoned. The destructors of
    /// that system may then hang too: end the program with std::quick_exit after all is saved.
    [[nodiscard]] static bool threadsLeftBehind() noexcept;

private:
    struct Body;
    std::unique_ptr<Body> body_;
};

} // namespace piolo::device
