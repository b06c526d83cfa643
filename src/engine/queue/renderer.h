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
    /// Whether what is rendered from now on is heard; true at first. The thread that renders, between blocks.
    /// Real-time-safe. No longer heard: the run inside is void and the count-in comes again with the next
    /// bar. Heard again: what runs is silent up to the beginning of a bar.
    virtual void setHeard(bool /*heard*/) noexcept {}
};

} // namespace piolo::engine
