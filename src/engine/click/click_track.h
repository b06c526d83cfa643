// SPDX-License-Identifier: GPL-3.0-or-later
// A click written down in advance: bars at given tempi, one after the other. For `click` and `track`,
// offline.
#pragma once

#include "core/passage/click_pattern.h"
#include "engine/click/mix.h"
#include "engine/queue/renderer.h"
#include "engine/time/beat_parts.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace piolo::engine {

/// Bars of one tempo, below 2^31 of them. A count-in clicks the beats only.
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
    ClickPattern click{}; ///< of every stretch but the count-ins, each of which is a run from bar 1 on
};

/// One pulse of a track.
struct TrackPulse {
    std::uint64_t sample = 0;
    Layer layer = Layer::beat;
    std::size_t stretch = 0;
    std::int64_t beat = 0; ///< since the stretch began, from 0, beats of waiting included
    std::int32_t part = 0; ///< inside the beat
    bool sounds = true;    ///< false: the click pattern leaves it out
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
/// How many beats a stretch of a track lasts, its waits included.
[[nodiscard]] std::int64_t beatsOf(const ClickTrack& track, const Stretch& stretch);
/// Where the pulses of the track's beats lie.
[[nodiscard]] BeatParts partsOf(const ClickTrack& track);

} // namespace piolo::engine
