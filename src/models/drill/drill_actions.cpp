// SPDX-License-Identifier: GPL-3.0-or-later
// What the keys and buttons do to the drill.
#include "core/rule/build_up.h"
#include "models/drill/drill_model.h"

namespace piolo::models {

void DrillModel::strike(std::int64_t nanos) {
    switch (state_) {
    case State::Stopped:
        return begin(RunKind::run);
    case State::Playing:
        unheard_.clear();
        strike_ = session_.miss(nanos);
        return;
    case State::Paused:
        return goOn();
    }
}

void DrillModel::pedal(const practice::PedalAct& act) {
    switch (act.kind) {
    case practice::PedalAct::Kind::mark:
    case practice::PedalAct::Kind::press:
        return strike(act.nanos);
    case practice::PedalAct::Kind::held:
        if (act.marked) return strikeHeld();
        if (state_ == State::Stopped && !hearing()) emit wantsNext();
        return stop();
    case practice::PedalAct::Kind::twice:
        return act.marked ? strikeTwice() : takeBack();
    }
}

void DrillModel::strikeHeld() {
    session_.withdraw(strike_);
    stop();
}

void DrillModel::strikeTwice() {
    backAfter_ = strike_;
    session_.withdraw(strike_);
}

void DrillModel::withdrawn(std::uint64_t press) {
    setFeedback(Feedback::None);
    if (press != backAfter_) return;
    backAfter_ = 0;
    takeBack();
}

void DrillModel::markClean(std::int64_t nanos) {
    if (state_ == State::Paused) return goOn();
    if (state_ != State::Playing || !openEnded()) return;
    unheard_.clear();
    session_.clean(nanos);
}

void DrillModel::attempt() { begin(RunKind::attempt); }

void DrillModel::begin(RunKind kind) {
    const PassageRecord* known = record();
    if (known == nullptr || state_ != State::Stopped || session_.active()) return;
    const Passage passage = played(kind);
    const Standing standing = standingFor(kind);
    if (kind == RunKind::run) journalOpening();
    if (!session_.begin(passage, standing, kind)) return;
    model_ = 0; // the engine ends it
    coming_.clear();
    const auto latest = search();
    seeking_ = kind == RunKind::run && latest && !latest->over;
    kind_ = kind;
    beats_.show(passage.music, passage.click);
    stopAsked_ = false;
    unheard_.clear();
    state_ = State::Playing;
    shown_ = standing;
    rest_.playing(true, sound_.nowNanos());
    setFeedback(Feedback::None);
    timer_.start();
    refresh();
}

Standing DrillModel::standingFor(RunKind kind) const {
    if (kind == RunKind::run) return standingToStart();
    if (kind == RunKind::aside) return handSet(halfOf(standingToStart().tempo));
    return handSet(record()->passage.tempi.rule.target);
}

void DrillModel::seek() {
    if (record() == nullptr || state_ != State::Stopped || book_.readOnly() || session_.active()) return;
    const Tempo named = standingToStart().tempo;
    hand_.reset();
    book_.record(TempoFact{passage_, named, Reason::named});
    begin(RunKind::run);
}

// A passage of no piece, or of one whose length is not known, has bars after it as far as anybody knows.
Passage DrillModel::played(RunKind kind) const {
    Passage passage = record()->passage;
    if (kind != RunKind::context) return passage;
    const auto piece = book_.notebook().piece(passage.title.piece);
    passage.music = inContext(passage.music, piece ? piece->bars : 0);
    return passage;
}

void DrillModel::setStage(int stage) {
    const PassageRecord* known = record();
    if (known == nullptr || book_.readOnly() || stage < 0 || stage >= StageFigures::names().size()) return;
    const auto said = static_cast<Stage>(stage);
    if (said != known->stage) book_.record(StageFact{passage_, said});
}

void DrillModel::journalOpening() {
    const auto opening = book_.notebook().opening(passage_, book_.today());
    if (hand_)
        book_.record(TempoFact{passage_, *hand_, Reason::hand});
    else if (opening)
        book_.record(TempoFact{passage_, *opening, Reason::newDay});
    hand_.reset();
}

void DrillModel::hearFirst() {
    if (hearing()) return stop();
    if (state_ != State::Stopped || !canHear()) return;
    model_ = session_.playNotes(record()->passage, shown_.tempo, modelClick_);
    if (!hearing()) return;
    coming_.clear();
    setFeedback(Feedback::None);
    timer_.start();
    refresh();
}

void DrillModel::setModelClick(bool click) {
    if (click == modelClick_) return;
    modelClick_ = click;
    emit modelClickChanged();
}

void DrillModel::stop() {
    if (hearing()) {
        session_.stop();
        return endModel();
    }
    if (state_ == State::Stopped) return;
    stopAsked_ = true;
    session_.stop();
}

void DrillModel::takeBack() {
    if (state_ == State::Paused && pauseKind_ == PauseKind::NoKey) return doubt();
    if (hand_) {
        hand_.reset();
        setFeedback(Feedback::TakenBack);
        return refresh();
    }
    const Id target = book_.notebook().backTarget(passage_, book_.device());
    if (target.isNone() || book_.readOnly()) return setFeedback(Feedback::NothingToTakeBack);
    unheard_.clear();
    book_.record(BackFact{passage_, target});
    session_.reconcile();
    setFeedback(Feedback::TakenBack);
}

void DrillModel::setHand(Tempo tempo) {
    if (state_ != State::Stopped || !isOpen()) return;
    hand_ = tempo;
    if (tempo == natural().tempo) hand_.reset();
    refresh();
}

void DrillModel::faster() {
    if (const PassageRecord* known = record())
        setHand(stepUp(shown_.tempo, known->passage.tempi.rule.step, 1));
}

void DrillModel::slower() {
    if (state_ == State::Paused && pauseKind_ != PauseKind::NoKey) return halveTempo();
    if (const PassageRecord* known = record())
        setHand(stepDown(shown_.tempo, known->passage.tempi.rule.step, 1));
}

void DrillModel::goOn() {
    if (state_ != State::Paused) return;
    unheard_.clear();
    session_.resume();
}

void DrillModel::doubt() {
    if (state_ != State::Paused) return;
    if (!unheard_.empty()) book_.record(DoubtFact{passage_, unheard_});
    session_.reconcile();
    goOn();
}

void DrillModel::halveTempo() {
    if (state_ != State::Paused || apart()) return; // what moves nothing is offered no tempo
    book_.record(TempoFact{passage_, halfTempo(), Reason::offer});
    session_.reconcile();
    goOn();
}

void DrillModel::wantShorter() {
    stop();
    emit wantsEdit(passageText(), true);
}

void DrillModel::dismissRest() {
    rest_.dismiss(sound_.nowNanos());
    emit changed();
}

} // namespace piolo::models
