// SPDX-License-Identifier: GPL-3.0-or-later
// Handles what the engine decides: each note arrives once, is answered at once if it responds to a key, and
// is shown when it is audible.
#include "practice/drill/drill_control.h"

namespace piolo::practice {

namespace {

constexpr std::int64_t feedbackNanos = 1'000'000'000;

} // namespace

void DrillControl::take(const DrillNote& note) {
    using Kind = engine::Event::Kind;
    // Earlier events belong to the previous drill or playback.
    if (note.event.kind == Kind::started || note.event.kind == Kind::playbackBegan) coming_.clear();
    answer(note);
    const bool another = note.fact && passageOf(note.fact->body) != passage_; // of the turn before
    if (isBusy() && !another) coming_.push_back(note.event);
}

void DrillControl::answer(const DrillNote& note) {
    using Kind = engine::Event::Kind;
    if (note.fact) marks_.add(*note.fact);
    if (note.event.kind == Kind::runEnded) answerRunEnded(note);
    if (note.event.kind == Kind::lateMiss || note.event.kind == Kind::missMarked)
        setFeedback(Feedback::missed);
    if (note.event.kind == Kind::stopped && stopAsked_) finish();
}

void DrillControl::answerRunEnded(const DrillNote& note) {
    if (note.event.mark == Mark::missed) {
        unheard_.clear();
        setFeedback(Feedback::missed);
    } else if (note.event.mark == Mark::clean && note.fact) {
        unheard_.add(passage_, note.fact->id);
    }
}

void DrillControl::tick() {
    if (sleep_.sleptMeanwhile(sound_.sleptNanos())) stop();
    session_.catchUp();
    const std::uint64_t audible = sound_.audibleAt(sound_.nowNanos());
    while (!coming_.empty() && coming_.front().sample <= audible) {
        const engine::Event event = coming_.front();
        coming_.pop_front();
        hear(event);
        emit heard(event);
    }
}

void DrillControl::hear(const engine::Event& event) {
    using Kind = engine::Event::Kind;
    if (hearing()) return hearPlayback(event);
    if (state_ == State::stopped) return;
    switch (event.kind) {
    case Kind::pulse:
        return hearPulse(event);
    case Kind::runBegan:
        if (sound_.nowNanos() - feedbackSince_ > feedbackNanos) setFeedback(Feedback::none);
        return;
    case Kind::runEnded:
        return hearRunEnded(event);
    case Kind::lateMiss:
    case Kind::tempoMoved:
    case Kind::adopted:
        return show(event.after);
    case Kind::paused:
        return pause(event.pause);
    case Kind::resumed:
        state_ = State::playing;
        rest_.playing(true, sound_.nowNanos());
        emit stateChanged();
        return;
    case Kind::stopped:
        return event.turnOver && !stopAsked_ ? endTurn() : finish();
    default:
        return;
    }
}

void DrillControl::hearPulse(const engine::Event& event) {
    if (event.waits)
        emit breathed();
    else
        emit pulsed(event);
}

void DrillControl::hearPlayback(const engine::Event& event) {
    using Kind = engine::Event::Kind;
    if (event.kind == Kind::pulse) return hearPulse(event);
    if (event.kind == Kind::playbackEnded && event.run == playback_) endPlayback();
}

void DrillControl::endPlayback() {
    playback_ = 0;
    coming_.clear();
    emit fellSilent();
    emit stateChanged();
    settle();
}

void DrillControl::hearRunEnded(const engine::Event& event) {
    if (!event.apart) show(event.after);
    emit breathed();
    if (event.mark == Mark::clean) {
        const bool climbed = event.after.tempo > event.before.tempo;
        setFeedback(event.secure ? Feedback::secure : climbed ? Feedback::climbed : Feedback::clean);
    }
    if (seeking_ && event.fullStreak && !event.apart) {
        stop();
        Standing found = shown_;
        found.tempo = event.before.tempo;
        show(found);
        setFeedback(Feedback::found);
    }
}

void DrillControl::pause(engine::Pause why) {
    state_ = State::paused;
    pause_ = why;
    rest_.playing(false, sound_.nowNanos());
    emit fellSilent();
    emit stateChanged();
}

void DrillControl::endTurn() {
    emit turnOver();
    if (!session_.active()) finish();
}

void DrillControl::finish() {
    state_ = State::stopped;
    seeking_ = false;
    kind_ = RunKind::run;
    coming_.clear();
    rest_.playing(false, sound_.nowNanos());
    emit fellSilent();
    emit stateChanged();
    settle();
}

} // namespace piolo::practice
