// SPDX-License-Identifier: GPL-3.0-or-later
// Renders a playback in advance, for the `model` verb, offline.
#pragma once

#include "engine/click/mix.h"
#include "engine/playback/playback_score.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <memory>

namespace piolo::engine {

/// Renders a playback from its first to its last sample, then silence.
class PlaybackTrack final : public Renderer {
public:
    /// Allocates memory.
    PlaybackTrack(const PlaybackScore& score, const Mix& mix);
    ~PlaybackTrack() override;
    /// Before the first render(). Not real-time-safe.
    void prepare(SampleRate rate, int maxBlock) override;
    /// Real-time-safe.
    void render(std::span<float> out) noexcept override;
    /// The sample nearest to the end of the last beat, plus a tenth of a second in which everything fades.
    /// Call after prepare().
    [[nodiscard]] std::uint64_t length() const noexcept;

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace piolo::engine
