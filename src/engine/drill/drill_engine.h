// SPDX-License-Identifier: GPL-3.0-or-later
// The drill, sample by sample: count-in, run, breath, and the rule between runs.
#pragma once

#include "engine/playback/playback_score.h"
#include "engine/queue/command.h"
#include "engine/queue/event.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <memory>

namespace piolo::engine {

/// One drill, one playback or one click without a passage at a time. Three threads may use it concurrently,
/// each with its own functions: the one that renders, the one that sends commands, the one that reads events.
class DrillEngine final : public Renderer {
public:
    DrillEngine();
    ~DrillEngine() override;

    /// As Renderer::prepare(): any thread, while nobody renders. Not real-time-safe.
    void prepare(SampleRate rate, int maxBlock) override;
    /// Audio thread. Real-time-safe. Any split into blocks gives the same samples and events, bit for bit, if
    /// the commands arrive at the same samples.
    void render(std::span<float> out) noexcept override;
    void setHeard(bool heard) noexcept override;

    /// Sender thread (one). Lock-free. False if the queue is full; the command was not sent.
    bool send(const Command& command) noexcept;
    /// Sender thread. Lock-free, allocates no memory. Starts a playback if the drill is idle by then;
    /// otherwise playbackEnded follows at once. Returns the number, counted from 1, that playbackBegan and
    /// playbackEnded carry as their run; 0 if the queue is full or two playbacks are already waiting: nothing
    /// was sent.
    std::uint64_t hear(const PlaybackScore& playback) noexcept;
    /// Reader thread (one). Lock-free. False if there is nothing to read.
    bool read(Event& event) noexcept;
    /// Any thread. The number of samples rendered since the first prepare().
    [[nodiscard]] std::uint64_t rendered() const noexcept;
    /// Any thread. The number of pulse events dropped because the queue was full. Events that decide the mark
    /// of a run are never lost: the engine keeps them and sends them later.
    [[nodiscard]] std::uint64_t pulsesNotSent() const noexcept;

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace piolo::engine
