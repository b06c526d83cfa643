// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/playback.h"

#include "engine/click/ceiling.h"
#include "engine/click/pulse_event.h"

#include <algorithm>
#include <limits>

namespace piolo::engine {

namespace {

constexpr std::uint64_t never = std::numeric_limits<std::uint64_t>::max();
constexpr float plainPeak = 0.5F;
constexpr float accentPeak = 0.65F;

} // namespace

void PlaybackSlot::fill(const PlaybackScore& score) noexcept {
    plan = inRange(score.plan);
    click = score.click;
    cue = score.cue;
    count = std::min(score.notes.size(), notes.size());
    std::copy_n(score.notes.begin(), count, notes.begin());
}

void Playback::prepare(SampleRate rate, std::uint64_t now) {
    ClickBank clicks;
    clicks.prepare(rate);
    prepare(rate, now, clicks);
}

void Playback::prepare(SampleRate rate, std::uint64_t now, const ClickBank& clicks) {
    stop(now);
    rate_ = rate;
    bank_.prepareLike(clicks);
    reed_.prepare(rate);
    tail_ = 0;
}

void Playback::start(PlaybackSlot& sheet, std::uint64_t now) noexcept {
    stop(now);
    sheet_ = &sheet;
    pulses_ = {sheet.plan, sheet.click};
    grid_ = {{now, 0}, sheet.plan.standing.tempo, rate_, static_cast<std::int64_t>(pulses_.perBeat())};
    end_ = grid_.sampleOf(pulses_.end());
    note_ = 0;
    sender_.send(event(Event::Kind::playbackBegan, now));
    if (sheet.cue) bank_.cue(mix_, Cue::rise, 0);
    findPulse();
}

void Playback::stop(std::uint64_t now) noexcept {
    if (sheet_ == nullptr) return;
    sender_.send(event(Event::Kind::playbackEnded, now));
    reed_.release();
    tail_ = fade(); // longer than any click
    sheet_->taken.store(false, std::memory_order_release);
    sheet_ = nullptr;
}

std::uint64_t Playback::sampleOf(PlaybackMoment moment) const noexcept {
    PulseGrid fine = grid_;
    fine.perBeat = moment.perBeat;
    return fine.sampleOf(moment.count);
}

std::uint64_t Playback::noteSample() const noexcept {
    return note_ < sheet_->count ? sampleOf(sheet_->notes[note_].onset) : never;
}

std::uint64_t Playback::nextSample() const noexcept {
    if (sheet_ == nullptr) return never;
    return std::min({pulse_, noteSample(), end_});
}

/// Does one thing that is due; false if nothing is due. Notes at the last moment come before the end.
bool Playback::happensAt(std::uint64_t now) noexcept {
    if (sheet_ == nullptr || nextSample() > now) return false;
    if (pulse_ <= now)
        pulse();
    else if (noteSample() <= now)
        beginNote();
    else
        stop(now);
    return true;
}

void Playback::pulse() noexcept {
    const auto click = pulses_.click();
    const auto place = pulses_.place();
    if (pulses_.isSent()) sender_.sendPulse(pulseEvent(event(Event::Kind::pulse, pulse_), click, place));
    if (click.sounds) bank_.strike(mix_, click.layer, 0, place.beat == 0);
    pulses_.advance();
    findPulse();
}

void Playback::findPulse() noexcept { pulse_ = pulses_.atEnd() ? never : grid_.sampleOf(pulses_.tick()); }

void Playback::beginNote() noexcept {
    const auto& note = sheet_->notes[note_];
    const auto onset = sampleOf(note.onset);
    const auto end = std::min(sampleOf(note.end), end_);
    reed_.begin({note.key, std::max(end, onset) - onset,
                 mix_.gainOf(Layer::playback) * (note.accent ? accentPeak : plainPeak)});
    ++note_;
}

void Playback::add(std::span<float> out, std::uint64_t now) noexcept {
    while (!out.empty() && (sheet_ != nullptr || tail_ > 0)) {
        while (happensAt(now)) {
        }
        const auto room = std::min<std::uint64_t>(out.size(), clicks_.size());
        const auto count = std::min(room, sheet_ != nullptr ? nextSample() - now : tail_);
        sound(out.first(static_cast<std::size_t>(count)));
        out = out.subspan(static_cast<std::size_t>(count));
        now += count;
    }
}

void Playback::sound(std::span<float> out) noexcept {
    const auto clicks = std::span(clicks_).first(out.size());
    bank_.mix(clicks);
    for (std::size_t i = 0; i < out.size(); ++i) out[i] += clicks[i];
    reed_.add(out);
    for (auto& value : out) value = bent(value);
    if (sheet_ == nullptr) tail_ -= out.size();
}

Event Playback::event(Event::Kind kind, std::uint64_t sample) const noexcept {
    Event sent;
    sent.kind = kind;
    sent.sample = sample;
    if (kind != Event::Kind::pulse) sent.run = sheet_->number;
    sent.tempo = sheet_->plan.standing.tempo;
    sent.before = sent.after = sheet_->plan.standing;
    sent.phase = pulses_.phase();
    sent.apart = true;
    return sent;
}

} // namespace piolo::engine
