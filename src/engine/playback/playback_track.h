// SPDX-License-Identifier: GPL-3.0-or-later
// A playback written down in advance, for the `model` verb, offline.
#pragma once

#include "engine/click/mix.h"
#include "engine/playback/playback_score.h"
#include "engine/queue/renderer.h"

#include <cstdint>
#include <memory>

namespace piolo::engine {

/// Renders a playback from its first to its last sample; silence after that.
class PlaybackTrack final : public Renderer {
public:
    /// Takes memory.
    PlaybackTrack(const PlaybackScore& score, const Mix& mix);
    ~PlaybackTrack() override;
    /// Before the first render(). Not real-time-safe.
    void prepare(SampleRate rate, int maxBlock) override;
    /// Real-time-safe.
    void render(std::span<float> out) noexcept override;
    /// The sample nearest to the end of the last beat, and a tenth of a second in which all fades. After
    /// prepare().
    [[nodiscard]] std::uint64_t length() const noexcept;

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace piolo::engine
