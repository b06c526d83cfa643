// SPDX-License-Identifier: GPL-3.0-or-later
// What is open, and its standing.
#include "practice/drill/drill_control.h"

#include "core/rule/build_up.h"

namespace piolo::practice {

namespace {

Tempo halfOf(Tempo tempo) {
    const std::int64_t halfBpm = tempo.thousandths() / 2 / 1000;
    return Tempo::clampedThousandths(halfBpm * 1000);
}

} // namespace

DrillControl::DrillControl(PracticeBook& book, SoundPort& sound, DrillSession& session, QObject* parent)
    : QObject(parent), book_(book), sound_(sound), session_(session), takeBacks_(book) {
    connect(&session_, &DrillSession::noted, this, &DrillControl::take);
    connect(&session_, &DrillSession::withdrawn, this, &DrillControl::withdrawn);
    connect(&book_, &PracticeBook::changed, this, &DrillControl::noteBook);
}

void DrillControl::open(Id passage) {
    if (passage == passage_) return;
    stop();
    marks_.clear();
    change(passage);
    settle();
}

void DrillControl::change(Id passage) {
    passage_ = passage;
    begun_.reset();
    hand_.reset();
    takeBacks_.forget();
    setFeedback(Feedback::none);
    emit opened();
}

const PassageRecord* DrillControl::record() const {
    const PassageRecord* found = passage_.isNone() ? nullptr : book_.notebook().passage(passage_);
    return found != nullptr && !found->removed ? found : nullptr;
}

void DrillControl::noteBook(const QString& passage) {
    if (!passage.isEmpty() && passage.toStdString() != passage_.text()) return;
    emit recordChanged();
    settle();
}

// While stopped, shows what the next run starts with.
void DrillControl::settle() {
    if (state_ != State::stopped) return;
    emit barsChanged();
    show(standingToStart());
}

void DrillControl::show(const Standing& standing) {
    if (standing == shown_) return;
    shown_ = standing;
    emit standingChanged();
}

std::optional<Tempo> DrillControl::opening() const {
    return passage_.isNone() ? std::nullopt : book_.notebook().opening(passage_, book_.today());
}

// A new date opens at its own tempo, and its streak always begins at 0.
Standing DrillControl::natural() const {
    const PassageRecord* known = record();
    if (known == nullptr) return {};
    if (const auto opens = opening()) return handSet(*opens);
    Standing standing = known->standing;
    if (known->lastDay && *known->lastDay < book_.today()) standing.streak = 0;
    return standing;
}

Standing DrillControl::standingToStart() const { return hand_ ? handSet(*hand_) : natural(); }

Standing DrillControl::standingFor(RunKind kind) const {
    if (kind == RunKind::run) return standingToStart();
    if (kind == RunKind::aside) return handSet(halfOf(standingToStart().tempo));
    return handSet(record()->passage.tempi.rule.target);
}

Passage DrillControl::played() const { return played(kind_); }

// If a passage has no piece, or one of unknown length, bars are assumed to follow it.
Passage DrillControl::played(RunKind kind) const {
    const PassageRecord* known = record();
    if (known == nullptr) return {};
    Passage passage = known->passage;
    if (kind != RunKind::context) return passage;
    const auto piece = book_.notebook().piece(passage.title.piece);
    passage.music = inContext(passage.music, piece ? piece->bars : 0);
    return passage;
}

std::optional<TempoSearch> DrillControl::search() const {
    const PassageRecord* known = record();
    return known == nullptr ? std::nullopt : searchOn(*known, book_.today());
}

SittingFigures DrillControl::sitting() const {
    const PassageRecord* const known = record();
    return known == nullptr || !begun_ ? SittingFigures{} : sittingFigures(*known, *begun_);
}

bool DrillControl::openEnded() const {
    const PassageRecord* known = record();
    return known != nullptr && known->passage.music.bars == 0;
}

bool DrillControl::canHear() const {
    const PassageRecord* known = record();
    return known != nullptr && known->passage.music.bars > 0 && !known->passage.notes.empty();
}

Tempo DrillControl::halfTempo() const { return halfOf(shown_.tempo); }

bool DrillControl::restDue() const { return state_ != State::playing && rest_.due(sound_.nowNanos()); }

void DrillControl::dismissRest() {
    rest_.dismiss(sound_.nowNanos());
    emit restChanged();
}

void DrillControl::setHand(std::optional<Tempo> tempo) {
    if (state_ != State::stopped || record() == nullptr) return;
    if (tempo == natural().tempo) tempo.reset();
    if (tempo == hand_) return;
    hand_ = tempo;
    shown_ = standingToStart();
    emit standingChanged();
}

void DrillControl::tap(std::int64_t nanos) {
    taps_.tap(nanos);
    if (const auto tapped = taps_.tempo()) setHand(*tapped);
}

void DrillControl::forgetHand() { hand_.reset(); }

void DrillControl::setFeedback(Feedback feedback) {
    feedback_ = feedback;
    feedbackSince_ = sound_.nowNanos();
    emit feedbackChanged();
}

} // namespace piolo::practice
