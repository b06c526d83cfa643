// SPDX-License-Identifier: GPL-3.0-or-later
// The drill, sample by sample: count-in, run, breath, and the rule at the boundary.
#pragma once

#include "engine/playback/playback_score.h"
#include "engine/queue/command.h"
#include "engine/queue/event.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <memory>

namespace piolo::engine {

/// One drill at a time, or the playback of a passage. Three threads may touch it at once, each with its own
/// functions: the one that renders, the one that sends, the one that reads.
class DrillEngine final : public Renderer {
public:
    DrillEngine();
    ~DrillEngine() override;

    /// Window side, before the device starts. Not real-time-safe.
    void prepare(SampleRate rate, int maxBlock) override;
    /// Audio thread. Real-time-safe. Any split into blocks gives the same samples and events, bit for bit,
    /// when the commands reach it at the same samples.
    void render(std::span<float> out) noexcept override;
    void setHeard(bool heard) noexcept override;

    /// Sender's thread (one). Lock-free. False when the queue is full: nothing was sent.
    bool send(const Command& command) noexcept;
    /// Sender's thread. Lock-free, takes no memory. Plays the playback when the drill is idle by then; else
    /// playbackEnded is told at once. Returns the number, from 1 on, that playbackBegan and playbackEnded
    /// have as their run; 0 when the queue is full or two playbacks wait already: nothing was sent.
    std::uint64_t hear(const PlaybackScore& playback) noexcept;
    /// Reader's thread (one). Lock-free. False when there is nothing to read.
    bool read(Event& event) noexcept;
    /// Any thread. Samples rendered since the first prepare().
    [[nodiscard]] std::uint64_t rendered() const noexcept;
    /// Any thread. Pulse events that found the queue full; events that decide a run's mark are never lost
    /// (the engine holds them back and tells them later).
    [[nodiscard]] std::uint64_t pulsesNotTold() const noexcept;

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace piolo::engine
