// SPDX-License-Identifier: GPL-3.0-or-later
// A click fixed in advance: bars at given tempi, one after the other. For `click` and `track`, offline.
#pragma once

#include "core/passage/click_pattern.h"
#include "engine/click/mix.h"
#include "engine/queue/renderer.h"
#include "engine/time/beat_parts.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace piolo::engine {

/// Bars at one tempo, fewer than 2^31. A count-in clicks the beats only.
struct Stretch {
    Tempo tempo = Tempo::bpm(60);
    std::int64_t bars = 1;
    bool countIn = false;
};

/// What to click. In every voice except `impulse`, a count-in sounds different; in `impulse` it has the
/// levels of beats.
struct ClickTrack {
    Meter meter;
    std::int32_t subdivision = 1;
    std::vector<Stretch> stretches;
    Mix mix;
    ClickPattern click{}; ///< for every stretch except count-ins; each such stretch is a run that starts at
                          ///< bar 1
};

/// One pulse of a track.
struct TrackPulse {
    std::uint64_t sample = 0;
    Layer layer = Layer::beat;
    std::size_t stretch = 0;
    std::int64_t beat = 0; ///< since the beginning of the stretch, counted from 0, including beats of waiting
    std::int32_t part = 0; ///< pulse inside the beat
    bool sounds = true;    ///< false: left out by the click pattern
};

/// Renders a ClickTrack from its first to its last sample, then silence.
class TrackPlayer final : public Renderer {
public:
    explicit TrackPlayer(ClickTrack track);
    ~TrackPlayer() override;
    /// Before the first render(). Not real-time-safe.
    void prepare(SampleRate rate, int maxBlock) override;
    /// Real-time-safe.
    void render(std::span<float> out) noexcept override;
    /// The sample nearest to the end of the last bar. Call after prepare().
    [[nodiscard]] std::uint64_t length() const noexcept;

private:
    struct State;
    std::unique_ptr<State> state_;
};

/// Every pulse of a track at that rate, in order.
[[nodiscard]] std::vector<TrackPulse> pulsesOf(const ClickTrack& track, SampleRate rate);
/// The number of beats in a stretch of a track, including its waits.
[[nodiscard]] std::int64_t beatsOf(const ClickTrack& track, const Stretch& stretch);
/// Where the pulses are inside the track's beats.
[[nodiscard]] BeatParts partsOf(const ClickTrack& track);

} // namespace piolo::engine
