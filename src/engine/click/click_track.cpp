// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/click_track.h"

#include "engine/click/click_voice.h"
#include "engine/drill/drill_plan.h"
#include "engine/time/section.h"

#include <algorithm>
#include <optional>

namespace piolo::engine {

namespace {

DrillPlan planOf(const ClickTrack& track) {
    Passage passage;
    passage.music.meter = track.meter;
    passage.music.subdivision = track.subdivision;
    passage.music.bars = 0;
    passage.click = track.click;
    return inRange(engine::planOf(passage, {}, {}));
}

std::int64_t beatsIn(const Stretch& stretch, const DrillPlan& plan) noexcept {
    const auto beats = stretch.bars * plan.beatsPerBar;
    return stretch.countIn ? beats
                           : beats + plan.breaths.beatsIn(stretch.bars, plan.beatsPerBar, stretch.tempo);
}

/// A stretch that begins at `start`, in the track's measure.
Section sectionOf(const Stretch& stretch, const DrillPlan& plan, const DrillMeasure& measure,
                  std::uint64_t start) noexcept {
    Section section;
    section.phase = stretch.countIn ? Phase::countIn : Phase::run;
    section.start = start;
    section.breathes = !stretch.countIn && stretch.tempo < plan.breaths.below;
    section.end = start + static_cast<std::uint64_t>(beatsIn(stretch, plan)) * measure.perBeat;
    return section;
}

/// Steps through the pulses of a track. Consecutive stretches with the same tempo share their origin, so that
/// nothing is rounded between them.
class Walk {
public:
    Walk(const ClickTrack& track, SampleRate rate)
        : stretches_(track.stretches), plan_(planOf(track)), measure_(DrillMeasure::of(plan_)) {
        grid_.rate = rate;
        grid_.perBeat = static_cast<std::int64_t>(measure_.perBeat);
        enter(0);
    }

    [[nodiscard]] bool atEnd() const noexcept { return stretch_ == stretches_.size(); }
    /// The current pulse. Not at the end.
    [[nodiscard]] TrackPulse pulse() const noexcept {
        const auto place = section_.placeOf(tick_, measure_);
        const auto click = section_.phase == Phase::countIn
                               ? Click{Layer::countIn, true}
                               : plan_.click.at(run_, place.bar, place.beat, place.part, plan_.groupStarts);
        const auto beat = static_cast<std::int64_t>((tick_ - section_.start) / measure_.perBeat);
        return {grid_.sampleOf(tick_), click.layer, stretch_, beat, place.part, click.sounds && !place.waits};
    }
    void advance() noexcept {
        tick_ = section_.phase == Phase::countIn ? section_.nextBeat(tick_ + 1, measure_)
                                                 : section_.nextPulse(tick_ + 1, measure_);
        if (tick_ >= section_.end) leave();
    }
    /// Moves to the beginning of the next stretch.
    void leave() noexcept { enter(stretch_ + 1); }
    /// At the end: the sample nearest to it.
    [[nodiscard]] std::uint64_t endSample() const noexcept { return grid_.sampleOf(tick_); }

private:
    void enter(std::size_t stretch) noexcept {
        stretch_ = stretch;
        tick_ = section_.end;
        while (!atEnd() && stretches_[stretch_].bars <= 0) ++stretch_;
        if (atEnd()) return;
        const auto& entered = stretches_[stretch_];
        if (!entered.countIn) ++run_;
        if (entered.tempo != grid_.tempo) {
            grid_.origin = grid_.originAt(tick_);
            grid_.tempo = entered.tempo;
            tick_ = 0;
        }
        section_ = sectionOf(entered, plan_, measure_, tick_);
    }

    const std::vector<Stretch>& stretches_;
    DrillPlan plan_;
    DrillMeasure measure_;
    PulseGrid grid_;
    Section section_{.end = 0};
    std::uint64_t tick_ = 0;
    std::uint64_t run_ = 0; // counted from 1; count-ins do not count
    std::size_t stretch_ = 0;
};

std::uint64_t lengthOf(const ClickTrack& track, SampleRate rate) {
    Walk walk(track, rate);
    while (!walk.atEnd()) walk.leave();
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
        const bool barBegins = pulse.part == 0 && pulse.beat % track.meter.beatsPerBar() == 0;
        if (pulse.sounds) bank.strike(track.mix, pulse.layer, 0, barBegins);
        walk->advance();
    }
};

TrackPlayer::TrackPlayer(ClickTrack track) : state_(std::make_unique<State>()) {
    state_->track = std::move(track);
}
TrackPlayer::~TrackPlayer() = default;

void TrackPlayer::prepare(SampleRate rate, int /*maxBlock*/) {
    state_->bank.prepareVoice(rate, state_->track.mix.voice);
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

std::int64_t beatsOf(const ClickTrack& track, const Stretch& stretch) {
    return beatsIn(stretch, planOf(track));
}

BeatParts partsOf(const ClickTrack& track) { return DrillMeasure::of(planOf(track)).parts; }

} // namespace piolo::engine
