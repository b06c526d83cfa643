// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/set/set_control.h"

#include <algorithm>
#include <set>

namespace piolo::practice {

SetControl::SetControl(PracticeBook& book, DrillControl& drill, QObject* parent)
    : QObject(parent), book_(book), drill_(drill) {
    connect(&drill_, &DrillControl::turnOver, this, &SetControl::playNext);
    connect(&drill_, &DrillControl::pulsed, this, &SetControl::hearPulse);
    connect(&drill_, &DrillControl::stateChanged, this, &SetControl::noteState);
    connect(&book_, &PracticeBook::changed, this, &SetControl::count);
}

bool SetControl::start(const std::vector<Id>& passages, TurnLength length) {
    const bool different = std::set(passages.begin(), passages.end()).size() == passages.size();
    const bool known = std::ranges::all_of(passages, [this](Id passage) { return exists(passage); });
    if (passages.size() < fewest || passages.size() > most || !different || !known) return false;
    if (drill_.isBusy()) return false;
    parts_.clear();
    for (const Id passage : passages)
        parts_.push_back({passage, book_.notebook().passage(passage)->entries.size(), {}});
    length_ = length;
    playing_ = counts_ = true;
    playTurn(0, false);
    return playing_;
}

void SetControl::playTurn(std::size_t place, bool follows) {
    place_ = place;
    announcing_ = true;
    drill_.playTurn(parts_[place].passage, length_.turn(static_cast<std::int32_t>(place) + 1, follows));
    if (drill_.state() == DrillControl::State::stopped) playing_ = announcing_ = false;
    emit changed();
    emit figuresChanged();
}

// If no passage is left, the drill stops.
void SetControl::playNext() {
    const std::size_t next = nextPlace();
    if (playing_ && exists(parts_[next].passage)) playTurn(next, true);
}

void SetControl::hearPulse() {
    if (!announcing_) return;
    announcing_ = false;
    emit changed();
}

void SetControl::noteState() {
    const bool stopped = drill_.state() == DrillControl::State::stopped;
    if (!stopped && !playing_) counts_ = false;
    if (!stopped || !playing_) return;
    playing_ = announcing_ = false;
    emit changed();
    emit figuresChanged();
    emit ended();
}

void SetControl::count() {
    if (!counts_) return;
    for (SetPart& part : parts_)
        if (const PassageRecord* record = book_.notebook().passage(part.passage))
            part.figures = sittingFigures(*record, part.first);
    emit figuresChanged();
}

bool SetControl::exists(Id passage) const {
    const PassageRecord* const record = book_.notebook().passage(passage);
    return record != nullptr && !record->removed;
}

/// Skips those that were removed; if all were, the next one.
std::size_t SetControl::placeAfter(std::size_t place) const {
    for (std::size_t step = 1; step <= parts_.size(); ++step) {
        const std::size_t next = (place + step) % parts_.size();
        if (exists(parts_[next].passage)) return next;
    }
    return (place + 1) % std::max<std::size_t>(1, parts_.size());
}

} // namespace piolo::practice
