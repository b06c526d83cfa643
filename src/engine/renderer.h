// SPDX-License-Identifier: GPL-3.0-or-later
// What a sound device (or a file, or the silent clock) asks of whatever makes the sound.
#pragma once

#include <cstdint>
#include <span>

namespace piolo::engine {

/// Frames per second, 8000…192000.
struct SampleRate {
    std::int32_t hertz = 48'000;
    constexpr bool operator==(const SampleRate&) const noexcept = default;
};

/// Mono float32 sound, one sample a frame.
class Renderer {
public:
    virtual ~Renderer() = default;
    /// Takes all the memory render() will need. Any thread, while nobody renders. Not real-time-safe. Called
    /// again with another rate, what runs goes on from the next bar at a new origin.
    virtual void prepare(SampleRate rate, int maxBlock) = 0;
    /// Fills `out` (any length) with the next samples. Audio thread. Real-time-safe: no memory, lock, system
    /// call or log.
    virtual void render(std::span<float> out) noexcept = 0;
};

} // namespace piolo::engine
