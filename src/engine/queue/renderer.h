// SPDX-License-Identifier: GPL-3.0-or-later
// The interface between whatever makes the sound and a sound device, a file or the silent clock.
#pragma once

#include <cstdint>
#include <span>

namespace piolo::engine {

/// Frames per second, 8000…192000.
struct SampleRate {
    std::int32_t hertz = 48'000;
    constexpr bool operator==(const SampleRate&) const noexcept = default;
};

/// Mono float32 sound, one sample per frame.
class Renderer {
public:
    virtual ~Renderer() = default;
    /// Allocates all memory that render() will need. Any thread, while nobody renders. Not real-time-safe. If
    /// called again with another rate, whatever runs continues from the next bar at a new origin.
    virtual void prepare(SampleRate rate, int maxBlock) = 0;
    /// Fills `out` (any length) with the next samples. Audio thread. Real-time-safe: no allocation, lock,
    /// system call or logging.
    virtual void render(std::span<float> out) noexcept = 0;
    /// Whether the output is audible from now on; initially true. Called on the rendering thread, between
    /// blocks. Real-time-safe. When it is no longer heard, the current run becomes void and the count-in
    /// starts again with the next bar. When it is heard again, whatever runs stays silent until a bar begins.
    virtual void setHeard(bool /*heard*/) noexcept {}
};

} // namespace piolo::engine
