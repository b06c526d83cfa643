// SPDX-License-Identifier: GPL-3.0-or-later
// A click written down in advance: bars at given tempi, one after the other. For `click` and `track`,
// offline.
#pragma once

#include "core/meter.h"
#include "core/tempo.h"
#include "engine/mix.h"
#include "engine/renderer.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace piolo::engine {

/// Bars of one tempo. A count-in clicks the beats only.
struct Stretch {
    Tempo tempo = Tempo::bpm(60);
    std::int64_t bars = 1;
    bool countIn = false;
};

/// What is clicked. In every voice but `impulse` a count-in is told apart; in `impulse` it has the beats'
/// levels.
struct ClickTrack {
    Meter meter;
    std::int32_t subdivision = 1;
    std::vector<Stretch> stretches;
    Mix mix;
};

/// One pulse of a track.
struct TrackPulse {
    std::uint64_t sample = 0;
    Layer layer = Layer::beat;
    std::size_t stretch = 0;
    std::int64_t beat = 0; ///< since the stretch began, from 0
    std::int32_t part = 0; ///< inside the beat
};

/// Renders a ClickTrack from its first to its last sample; silence after that.
class TrackPlayer final : public Renderer {
public:
    explicit TrackPlayer(ClickTrack track);
    ~TrackPlayer() override;
    /// Before the first render(). Not real-time-safe.
    void prepare(SampleRate rate, int maxBlock) override;
    /// Real-time-safe.
    void render(std::span<float> out) noexcept override;
    /// The sample nearest to the end of the last bar. After prepare().
    [[nodiscard]] std::uint64_t length() const noexcept;

private:
    struct State;
    std::unique_ptr<State> state_;
};

/// Every pulse of a track at that rate, in order.
[[nodiscard]] std::vector<TrackPulse> pulsesOf(const ClickTrack& track, SampleRate rate);

} // namespace piolo::engine
