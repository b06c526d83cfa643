// SPDX-License-Identifier: GPL-3.0-or-later
// What the keys and buttons do to the drill.
#include "practice/drill/drill_control.h"

namespace piolo::practice {

void DrillControl::strike(std::int64_t nanos) {
    switch (state_) {
    case State::stopped:
        return begin(RunKind::run);
    case State::playing:
        unheard_.clear();
        strike_ = session_.miss(nanos);
        return;
    case State::paused:
        return goOn();
    }
}

void DrillControl::pedal(const PedalAct& act) {
    switch (act.kind) {
    case PedalAct::Kind::mark:
    case PedalAct::Kind::press:
        return strike(act.nanos);
    case PedalAct::Kind::held:
        if (act.marked) return strikeHeld();
        if (!isBusy()) emit wantsNext();
        return stop();
    case PedalAct::Kind::twice:
        return act.marked ? strikeTwice() : takeBack();
    }
}

void DrillControl::strikeHeld() {
    session_.withdraw(strike_);
    stop();
}

void DrillControl::strikeTwice() {
    backAfter_ = strike_;
    session_.withdraw(strike_);
}

void DrillControl::withdrawn(std::uint64_t press) {
    setFeedback(Feedback::none);
    if (press != backAfter_) return;
    backAfter_ = 0;
    takeBack();
}

void DrillControl::markClean(std::int64_t nanos) {
    if (state_ == State::paused) return goOn();
    if (state_ != State::playing || !openEnded()) return;
    unheard_.clear();
    session_.clean(nanos);
}

void DrillControl::begin(RunKind kind) {
    if (state_ == State::stopped && !session_.active()) start(kind, {});
}

void DrillControl::playTurn(Id passage, const engine::Turn& turn) {
    if (state_ == State::paused || session_.active()) return;
    if (state_ == State::stopped)
        open(passage);
    else
        change(passage);
    start(RunKind::run, turn);
}

void DrillControl::start(RunKind kind, const engine::Turn& turn) {
    if (record() == nullptr) return;
    if (!turn.follows) marks_.clear();
    const Passage passage = played(kind);
    const Standing standing = standingFor(kind);
    if (kind == RunKind::run) journalOpening();
    if (!session_.begin(passage, standing, kind, turn)) return;
    begun_ = record()->entries.size();
    takeBacks_.forget();
    playback_ = 0; // the engine ends it
    coming_.clear();
    sleep_.begin(sound_.sleptNanos());
    const auto latest = search();
    seeking_ = kind == RunKind::run && turn.place == 0 && latest && !latest->over; // a set does not stop
    kind_ = kind;
    stopAsked_ = false;
    if (!turn.follows) unheard_.clear();
    state_ = State::playing;
    rest_.playing(true, sound_.nowNanos());
    emit barsChanged();
    show(standing);
    setFeedback(Feedback::none);
    emit stateChanged();
}

void DrillControl::seek() {
    if (record() == nullptr || state_ != State::stopped || book_.readOnly() || session_.active()) return;
    const Tempo named = standingToStart().tempo;
    hand_.reset();
    write(TempoFact{passage_, named, Reason::named});
    begin(RunKind::run);
}

void DrillControl::setStage(Stage stage) {
    const PassageRecord* known = record();
    if (known == nullptr || book_.readOnly() || stage == known->stage) return;
    book_.record(StageFact{passage_, stage});
}

void DrillControl::write(FactBody body) { marks_.add(book_.record(std::move(body))); }

void DrillControl::journalOpening() {
    if (hand_)
        write(TempoFact{passage_, *hand_, Reason::hand});
    else if (const auto opens = opening())
        write(TempoFact{passage_, *opens, Reason::newDay});
    hand_.reset();
}

void DrillControl::hearFirst(bool withClick) {
    if (hearing()) return stop();
    if (state_ != State::stopped || !canHear()) return;
    playback_ = session_.playNotes(record()->passage, shown_.tempo, withClick);
    if (!hearing()) return;
    coming_.clear();
    setFeedback(Feedback::none);
    emit stateChanged();
}

void DrillControl::stop() {
    if (hearing()) {
        session_.stop();
        return endPlayback();
    }
    if (state_ == State::stopped) return;
    stopAsked_ = true;
    session_.stop();
}

void DrillControl::takeBack() {
    if (state_ == State::paused && pause_ == engine::Pause::noKey) return doubt();
    if (hand_) {
        takeBacks_.discard(*hand_);
        hand_.reset();
        setFeedback(Feedback::takenBack);
        return settle();
    }
    const Id marked = marks_.passageOfNewest(book_.notebook(), book_.device());
    const Id passage = marked.isNone() ? passage_ : marked;
    const Id target = book_.notebook().backTarget(passage, book_.device());
    if (target.isNone() || book_.readOnly()) return setFeedback(Feedback::nothingToTakeBack);
    unheard_.clear();
    takeBacks_.take(passage, target);
    session_.reconcile();
    setFeedback(Feedback::takenBack);
}

void DrillControl::putBack() {
    const auto last = takeBacks_.putBack();
    if (!last) return;
    if (!last->putsBack) setHand(last->tempo);
    session_.reconcile();
    setFeedback(Feedback::putBack);
}

void DrillControl::faster() {
    if (const PassageRecord* known = record())
        setHand(stepUp(shown_.tempo, known->passage.tempi.rule.step, 1));
}

void DrillControl::slower() {
    if (state_ == State::paused && pause_ != engine::Pause::noKey) return halveTempo();
    if (const PassageRecord* known = record())
        setHand(stepDown(shown_.tempo, known->passage.tempi.rule.step, 1));
}

void DrillControl::goOn() {
    if (state_ != State::paused) return;
    unheard_.clear();
    session_.resume();
}

void DrillControl::doubt() {
    if (state_ != State::paused) return;
    for (const DoubtFact& doubt : unheard_.doubts()) write(doubt);
    session_.reconcile();
    goOn();
}

void DrillControl::halveTempo() {
    if (state_ != State::paused || apart()) return; // runs outside the rule get no tempo suggestion
    write(TempoFact{passage_, halfTempo(), Reason::offer});
    session_.reconcile();
    goOn();
}

} // namespace piolo::practice
