// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/run_through/run_through_control.h"

#include <algorithm>

namespace piolo::practice {

namespace {

constexpr std::int64_t nanosInMilli = 1'000'000;
constexpr std::int64_t thousandthsMinute = 60'000'000; // milliseconds in a minute, in thousandths

} // namespace

RunThroughControl::RunThroughControl(PracticeBook& book, SoundPort& sound, QObject* parent)
    : QObject(parent), book_(book), sound_(sound) {}

void RunThroughControl::open(Id piece) {
    if (state_ != State::ready) return;
    id_ = piece;
    emit opened();
}

std::optional<Piece> RunThroughControl::piece() const {
    if (id_.isNone()) return std::nullopt;
    return book_.notebook().piece(id_);
}

std::int64_t RunThroughControl::millis() const {
    if (state_ != State::playing) return millis_;
    return std::clamp((sound_.nowNanos() - began_) / nanosInMilli, playingMillis.least, playingMillis.most);
}

std::optional<std::int32_t> RunThroughControl::bar() const {
    return state_ == State::playing ? barAt(millis()) : std::nullopt;
}

// The number of whole bars that have passed at the piece's tempo; pieces do not state a pick-up.
std::optional<std::int32_t> RunThroughControl::barAt(std::int64_t millis) const {
    const auto known = piece();
    if (!known || !known->music.tempo) return std::nullopt;
    const std::int64_t beats = millis * known->music.tempo->thousandths() / thousandthsMinute;
    const std::int64_t bar = 1 + beats / known->music.meter.beatsPerBar();
    const std::int64_t last = known->bars > 0 ? known->bars : Piece::mostBars;
    return static_cast<std::int32_t>(std::min(bar, last));
}

bool RunThroughControl::allBarsValid() const {
    return std::ranges::all_of(stops_, [](const ReviewedStop& stop) { return stop.bar.has_value(); });
}

void RunThroughControl::turnTo(State state) {
    state_ = state;
    emit stateChanged();
}

void RunThroughControl::start() {
    if (state_ != State::ready || !piece()) return;
    began_ = sound_.nowNanos();
    sleep_.begin(sound_.sleptNanos());
    stops_.clear();
    turnTo(State::playing);
}

void RunThroughControl::markStop() {
    if (state_ != State::playing || stops_.size() >= RunThroughFact::mostStops) return;
    stops_.push_back({millis(), bar().value_or(0)});
    emit stopsChanged();
}

void RunThroughControl::takeBackStop() {
    if (state_ != State::playing || stops_.empty()) return;
    stops_.pop_back();
    emit stopsChanged();
}

void RunThroughControl::pedal(const PedalAct& act) {
    using Act = PedalAct::Kind;
    if (act.kind == Act::press) return start();
    if (act.kind == Act::mark) return markStop();
    if (act.marked) takeBackStop(); // the press that marked it is void
    if (act.kind == Act::held) return finish(true);
    takeBackStop();
}

void RunThroughControl::finish(bool reachedTheEnd) {
    if (state_ != State::playing) return;
    millis_ = millis();
    finished_ = reachedTheEnd;
    turnTo(State::review);
}

void RunThroughControl::tick() {
    if (sleep_.sleptMeanwhile(sound_.sleptNanos())) finish(false);
}

void RunThroughControl::setBar(std::size_t stop, std::optional<std::int32_t> bar) {
    if (state_ != State::review || stop >= stops_.size()) return;
    stops_[stop].bar = bar;
    emit stopsChanged();
}

void RunThroughControl::keep() {
    if (state_ != State::review || !allBarsValid() || book_.readOnly()) return;
    RunThroughFact fact{id_, {}, millis_, finished_, {}};
    for (const ReviewedStop& stop : stops_) fact.stops.push_back({*stop.bar, stop.millis});
    book_.record(std::move(fact));
    discard();
}

void RunThroughControl::discard() {
    if (state_ != State::review) return;
    stops_.clear();
    millis_ = 0;
    turnTo(State::ready);
}

} // namespace piolo::practice
