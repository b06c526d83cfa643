// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click_track.h"

#include "engine/click_voice.h"
#include "engine/pulse_grid.h"

#include <algorithm>
#include <optional>

namespace piolo::engine {

namespace {

Layer layerOf(const Meter& meter, std::int64_t beat, std::int32_t part) {
    if (part != 0) return Layer::subdivision;
    const auto inBar = beat % meter.beatsPerBar();
    if (inBar == 0) return Layer::downbeat;
    return ((meter.groupStarts() >> inBar) & 1U) != 0 ? Layer::group : Layer::beat;
}

/// Walks through the pulses of a track. Stretches of one tempo in a row share their origin, so that nothing
/// is rounded between them.
class Walk {
public:
    Walk(const ClickTrack& track, SampleRate rate) : track_(&track) {
        grid_.rate = rate;
        grid_.perBeat = track.subdivision;
        enter(0);
    }

    [[nodiscard]] bool atEnd() const noexcept { return stretch_ == track_->stretches.size(); }
    /// The pulse the walk stands on. Not at the end.
    [[nodiscard]] TrackPulse pulse() const noexcept {
        const auto subdivision = static_cast<std::uint64_t>(track_->subdivision);
        const auto beat = static_cast<std::int64_t>(pulse_ / subdivision);
        const auto part = static_cast<std::int32_t>(pulse_ % subdivision);
        const auto layer =
            track_->stretches[stretch_].countIn ? Layer::countIn : layerOf(track_->meter, beat, part);
        return {grid_.sampleOf(base_ + pulse_), layer, stretch_, beat, part};
    }
    void advance() noexcept {
        const auto& stretch = track_->stretches[stretch_];
        pulse_ += stretch.countIn ? static_cast<std::uint64_t>(track_->subdivision) : 1U;
        if (pulse_ < pulsesIn(stretch)) return;
        base_ += pulsesIn(stretch);
        enter(stretch_ + 1);
    }
    /// At the end: the sample nearest to it.
    [[nodiscard]] std::uint64_t endSample() const noexcept { return grid_.sampleOf(base_); }

private:
    [[nodiscard]] std::uint64_t pulsesIn(const Stretch& stretch) const noexcept {
        return static_cast<std::uint64_t>(stretch.bars) *
               static_cast<std::uint64_t>(track_->meter.beatsPerBar()) *
               static_cast<std::uint64_t>(track_->subdivision);
    }
    void enter(std::size_t stretch) noexcept {
        stretch_ = stretch;
        pulse_ = 0;
        while (!atEnd() && track_->stretches[stretch_].bars <= 0) ++stretch_;
        if (atEnd() || track_->stretches[stretch_].tempo == grid_.tempo) return;
        grid_.origin = grid_.originAt(base_);
        grid_.tempo = track_->stretches[stretch_].tempo;
        base_ = 0;
    }

    const ClickTrack* track_;
    PulseGrid grid_;
    std::uint64_t base_ = 0; // the grid's pulse with which the stretch begins
    std::uint64_t pulse_ = 0;
    std::size_t stretch_ = 0;
};

std::uint64_t lengthOf(const ClickTrack& track, SampleRate rate) {
    ClickTrack bars = track;
    bars.subdivision = 1;
    Walk walk(bars, rate);
    while (!walk.atEnd()) walk.advance();
    return walk.endSample();
}

} // namespace

struct TrackPlayer::State {
    ClickTrack track;
    ClickBank bank;
    std::optional<Walk> walk;
    std::uint64_t now = 0;
    std::uint64_t length = 0;

    void strike(const TrackPulse& pulse) noexcept {
        bank.strike(track.mix, pulse.layer, 0,
                    pulse.part == 0 && pulse.beat % track.meter.beatsPerBar() == 0);
        walk->advance();
    }
};

TrackPlayer::TrackPlayer(ClickTrack track) : state_(std::make_unique<State>()) {
    state_->track = std::move(track);
}
TrackPlayer::~TrackPlayer() = default;

void TrackPlayer::prepare(SampleRate rate, int /*maxBlock*/) {
    state_->bank.prepare(rate);
    state_->walk.emplace(state_->track, rate);
    state_->now = 0;
    state_->length = lengthOf(state_->track, rate);
}

void TrackPlayer::render(std::span<float> out) noexcept {
    while (!out.empty()) {
        auto count = static_cast<std::uint64_t>(out.size());
        while (state_->walk && !state_->walk->atEnd()) {
            const auto pulse = state_->walk->pulse();
            if (pulse.sample > state_->now) {
                count = std::min(count, pulse.sample - state_->now);
                break;
            }
            state_->strike(pulse);
        }
        state_->bank.mix(out.first(static_cast<std::size_t>(count)));
        out = out.subspan(static_cast<std::size_t>(count));
        state_->now += count;
    }
}

std::uint64_t TrackPlayer::length() const noexcept { return state_->length; }

std::vector<TrackPulse> pulsesOf(const ClickTrack& track, SampleRate rate) {
    std::vector<TrackPulse> pulses;
    for (Walk walk(track, rate); !walk.atEnd(); walk.advance()) pulses.push_back(walk.pulse());
    return pulses;
}

} // namespace piolo::engine
