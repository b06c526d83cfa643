// SPDX-License-Identifier: GPL-3.0-or-later
// What the engine decides: each note comes once, answers a key at once, and is shown when it can be heard.
#include "models/drill/drill_model.h"

namespace piolo::models {

namespace {

constexpr std::int64_t feedbackNanos = 1'000'000'000;

} // namespace

// What answers a key is shown at once, everything else waits for its sound.
void DrillModel::take(const practice::DrillNote& note) {
    using Kind = engine::Event::Kind;
    // What comes before belongs to the drill or the playback before.
    if (note.event.kind == Kind::started || note.event.kind == Kind::playbackBegan) coming_.clear();
    answer(note);
    if (state_ != State::Stopped || hearing()) coming_.push_back(note.event);
}

void DrillModel::answer(const practice::DrillNote& note) {
    using Kind = engine::Event::Kind;
    if (note.event.kind == Kind::runEnded) answerRunEnded(note);
    if (note.event.kind == Kind::lateMiss || note.event.kind == Kind::missMarked)
        setFeedback(Feedback::Missed);
    if (note.event.kind == Kind::stopped && stopAsked_) finish();
}

void DrillModel::answerRunEnded(const practice::DrillNote& note) {
    if (note.event.mark == Mark::missed) {
        unheard_.clear();
        setFeedback(Feedback::Missed);
    } else if (note.event.mark == Mark::clean && note.fact) {
        unheard_.push_back(note.fact->id);
    }
}

void DrillModel::tick() {
    session_.catchUp();
    const std::uint64_t audible = sound_.audibleAt(sound_.nowNanos());
    while (!coming_.empty() && coming_.front().sample <= audible) {
        const engine::Event event = coming_.front();
        coming_.pop_front();
        sound(event);
    }
}

void DrillModel::sound(const engine::Event& event) {
    using Kind = engine::Event::Kind;
    if (hearing()) return soundModel(event);
    if (state_ == State::Stopped) return;
    switch (event.kind) {
    case Kind::pulse:
        return event.waits ? beats_.breathe() : beats_.sound(event);
    case Kind::runBegan:
        if (sound_.nowNanos() - feedbackSince_ > feedbackNanos) setFeedback(Feedback::None);
        return;
    case Kind::runEnded:
        return soundRunEnded(event);
    case Kind::lateMiss:
    case Kind::tempoMoved:
    case Kind::adopted:
        shown_ = event.after;
        return refresh();
    case Kind::paused:
        return pause(event.pause);
    case Kind::resumed:
        state_ = State::Playing;
        rest_.playing(true, sound_.nowNanos());
        return refresh();
    case Kind::stopped:
        return finish();
    default:
        return;
    }
}

void DrillModel::soundModel(const engine::Event& event) {
    using Kind = engine::Event::Kind;
    if (event.kind == Kind::pulse) return event.waits ? beats_.breathe() : beats_.sound(event);
    if (event.kind == Kind::playbackEnded && event.run == model_) endModel();
}

void DrillModel::endModel() {
    model_ = 0;
    timer_.stop();
    beats_.rest();
    refresh();
}

void DrillModel::soundRunEnded(const engine::Event& event) {
    if (!event.apart) shown_ = event.after;
    beats_.breathe();
    if (event.mark == Mark::clean) {
        const bool climbed = event.after.tempo > event.before.tempo;
        setFeedback(event.secure ? Feedback::Secure : climbed ? Feedback::Climbed : Feedback::Clean);
    }
    if (seeking_ && event.fullStreak && !event.apart) {
        stop();
        shown_.tempo = event.before.tempo;
        setFeedback(Feedback::Found);
    }
    refresh();
}

void DrillModel::pause(engine::Pause why) {
    state_ = State::Paused;
    pauseKind_ = why == engine::Pause::noKey         ? PauseKind::NoKey
                 : why == engine::Pause::threeMisses ? PauseKind::ThreeMisses
                                                     : PauseKind::BelowStart;
    rest_.playing(false, sound_.nowNanos());
    beats_.rest();
    refresh();
}

void DrillModel::finish() {
    state_ = State::Stopped;
    seeking_ = false;
    kind_ = RunKind::run;
    timer_.stop();
    rest_.playing(false, sound_.nowNanos());
    beats_.rest();
    refresh();
}

} // namespace piolo::models
