// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/steady_click.h"

#include "engine/click/pulse_event.h"

namespace piolo::engine {

namespace {

DrillMeasure measureOf(const ClickPlan& click) noexcept {
    DrillPlan plan;
    plan.beatsPerBar = click.beatsPerBar;
    plan.subdivision = click.subdivision;
    plan.bars = 0;
    return DrillMeasure::of(inRange(plan));
}

} // namespace

void SteadyClick::setRate(SampleRate rate, std::uint64_t now) noexcept {
    if (number_ != 0 && rate != rate_) {
        const auto tick = timeline_.nextBar();
        const auto place = timeline_.section().placeOf(tick, measure_);
        const auto way = (timeline_.sampleOf(tick) - now) * static_cast<std::uint64_t>(rate.hertz) /
                         static_cast<std::uint64_t>(rate_.hertz);
        rate_ = rate;
        enter({now + way, 0}, plan_, place);
    }
    rate_ = rate;
}

void SteadyClick::play(std::uint64_t number, const ClickPlan& plan, std::uint64_t now) noexcept {
    if (number > last_) {
        stop(now);
        number_ = last_ = number;
        muted_ = !heard_;
        enter({now, 0}, plan, {0});
        sender_.send(event(Event::Kind::clickBegan, now));
    }
    if (number == number_) wanted_ = plan;
}

void SteadyClick::end(std::uint64_t number, std::uint64_t now) noexcept {
    if (number_ == 0 || number != number_) return;
    sender_.send(event(Event::Kind::clickEnded, now));
    number_ = 0;
}

void SteadyClick::setHeard(bool heard) noexcept {
    if (heard != heard_) muted_ = true;
    heard_ = heard;
}

std::uint64_t SteadyClick::nextSample() const noexcept {
    return number_ == 0 ? Section::never : timeline_.pulseSample();
}

std::optional<Click> SteadyClick::take(std::uint64_t now) noexcept {
    if (nextSample() > now) return std::nullopt;
    const auto place = timeline_.section().placeOf(timeline_.nextPulse(), measure_);
    if (place.part == 0) follow(timeline_.nextPulse(), place);
    auto click = choice_.at(1, place.bar, place.beat, place.part, plan_.groupStarts);
    sender_.sendPulse(pulseEvent(event(Event::Kind::pulse, now), click, place));
    if (heard_ && place.beat == 0 && place.part == 0) muted_ = false;
    click.sounds = click.sounds && !muted_;
    timeline_.passPulse();
    return click;
}

/// Changes to what is wanted at the beat of `tick`, and to its meter only if a bar begins there.
void SteadyClick::follow(std::uint64_t tick, BarPlace place) noexcept {
    auto next = wanted_;
    if (place.beat > 0) {
        next.beatsPerBar = plan_.beatsPerBar;
        next.groupStarts = plan_.groupStarts;
    }
    if (next == plan_) return;
    const auto sample = timeline_.pulseSample();
    enter(timeline_.grid().originAt(tick), next, place);
    sender_.send(event(Event::Kind::clickChanged, sample));
}

/// A grid with its tick 0 at `origin`, where the beat `place` begins.
void SteadyClick::enter(Origin origin, const ClickPlan& plan, BarPlace place) noexcept {
    plan_ = plan;
    measure_ = measureOf(plan);
    timeline_.begin(origin, plan.tempo, rate_, measure_);
    Section bars;
    bars.phase = Phase::run;
    bars.offset = static_cast<std::uint64_t>(place.beat) * measure_.perBeat;
    bars.firstBar = place.bar;
    timeline_.enter(bars);
    timeline_.setBegun();
}

Event SteadyClick::event(Event::Kind kind, std::uint64_t sample) const noexcept {
    Event sent;
    sent.kind = kind;
    sent.sample = sample;
    if (kind != Event::Kind::pulse) sent.run = number_;
    sent.tempo = plan_.tempo;
    sent.phase = Phase::run;
    sent.apart = true;
    sent.click = plan_;
    return sent;
}

} // namespace piolo::engine
