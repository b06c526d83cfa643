// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/drill.h"

#include "engine/click/pulse_event.h"

#include <algorithm>

namespace piolo::engine {

void Drill::prepare(SampleRate rate) {
    if (prepared_ && rate == rate_) return;
    bank_.prepare(rate);
    if (mode_ == Mode::running) changeRate(rate);
    rate_ = rate;
    prepared_ = true;
}

void Drill::render(std::span<float> out) noexcept {
    while (!out.empty()) {
        while (happensNow()) {
        }
        const auto count = std::min(static_cast<std::uint64_t>(out.size()), nextSample() - now_);
        bank_.mix(out.first(static_cast<std::size_t>(count)));
        out = out.subspan(static_cast<std::size_t>(count));
        now_ += count;
    }
}

void Drill::strike(Click click) noexcept {
    if (click.sounds) bank_.strike(mix_, click.layer, 0);
}

void Drill::setHeard(bool heard) noexcept {
    if (heard == heard_) return;
    heard_ = heard;
    muted_ = !heard || mode_ == Mode::running;
    if (!heard && mode_ == Mode::running) soundLost();
}

std::uint64_t Drill::nextSample() const noexcept {
    const auto tone = std::min(cues_.nextSample(), tones_.nextSample());
    return mode_ == Mode::running ? std::min(timeline_.nextSample(), tone) : tone;
}

/// Does one thing that is due at this sample; false if nothing is due.
bool Drill::happensNow() noexcept {
    if (const auto cue = cues_.take(now_)) {
        if (!muted_) bank_.cue(mix_, *cue, 0);
        return true;
    }
    if (tones_.take(now_)) {
        if (!muted_) bank_.cue(mix_, Cue::turn, 0);
        return true;
    }
    if (mode_ != Mode::running || nextSample() > now_) return false;
    if (!timeline_.hasBegun())
        sectionBegins();
    else if (timeline_.pulseIsInside() && timeline_.pulseSample() <= now_)
        pulse();
    else
        sectionEnds();
    return true;
}

void Drill::sectionBegins() noexcept {
    timeline_.setBegun();
    if (timeline_.section().phase != Phase::run) return;
    const auto* before = history_.newest();
    const bool noGap = before != nullptr && before->endedAt == now_ && before->mark != Mark::voided;
    run_ = {};
    run_.number = ++runs_;
    run_.ownFrom = noGap ? timeline_.sampleOf(timeline_.section().start + measure_.perBeat) : now_;
    run_.grid = timeline_.grid();
    run_.section = timeline_.section();
    auto sent = event(Event::Kind::runBegan, now_);
    sent.run = run_.number;
    sender_.send(sent);
}

void Drill::sectionEnds() noexcept {
    const auto end = timeline_.section().end;
    switch (timeline_.section().phase) {
    case Phase::gap:
        enterCountIn(end);
        return;
    case Phase::countIn:
        enterRun(end);
        return;
    default:
        break;
    }
    const auto mark = run_.mark;
    if (mark == Mark::clean) ++runsWithoutKey_;
    endRun(mark, VoidReason::none, now_);
    follow(end, mark == Mark::missed);
}

void Drill::pulse() noexcept {
    const auto tick = timeline_.nextPulse();
    const auto place = timeline_.section().placeOf(tick, measure_);
    if (isSent(tick, place)) {
        const auto click = clickAt(tick, place);
        auto sent = pulseEvent(event(Event::Kind::pulse, now_), click, place);
        sent.run = timeline_.inRun() ? run_.number : 0;
        sender_.sendPulse(sent);
        if (heard_ && place.beat == 0 && place.part == 0) muted_ = false;
        if (!muted_ && click.sounds) bank_.strike(mix_, click.layer, 0, place.beat == 0);
    }
    timeline_.passPulse();
}

bool Drill::isSent(std::uint64_t tick, BarPlace place) const noexcept {
    const auto& section = timeline_.section();
    if (section.phase == Phase::countIn || place.waits) return place.part == 0;
    return section.phase == Phase::run && tick <= section.landing;
}

Click Drill::clickAt(std::uint64_t tick, BarPlace place) const noexcept {
    const auto& section = timeline_.section();
    if (section.phase == Phase::countIn) return {Layer::countIn, true};
    if (tick == section.landing) return {plan_.click.landing(), true};
    auto click = plan_.click.at(run_.number, place.bar, place.beat, place.part, plan_.groupStarts);
    click.sounds = click.sounds && !place.waits && !plan_.clickless;
    return click;
}

Event Drill::event(Event::Kind kind, std::uint64_t sample) const noexcept {
    Event sent;
    sent.kind = kind;
    sent.sample = sample;
    sent.runsEnded = runsEnded_;
    sent.tempo = timeline_.tempo();
    sent.before = sent.after = tally_.standing;
    if (mode_ == Mode::running) sent.phase = timeline_.section().phase;
    if (mode_ == Mode::paused) sent.phase = Phase::paused;
    sent.apart = plan_.apart;
    return sent;
}

} // namespace piolo::engine
