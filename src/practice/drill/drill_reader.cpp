// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/drill_reader.h"

#include "engine/drill/run_history.h"

#include <algorithm>
#include <utility>

namespace piolo::practice {

namespace {

Reason reasonOf(engine::VoidReason reason) {
    switch (reason) {
    case engine::VoidReason::none:
        return Reason::none;
    case engine::VoidReason::stopped:
        return Reason::stopped;
    case engine::VoidReason::tempoChanged:
        return Reason::tempoChanged;
    case engine::VoidReason::soundLost:
        return Reason::soundLost;
    }
    return Reason::none;
}

} // namespace

DrillReader::DrillReader(PracticeBook& book, SoundPort& sound, engine::DrillEngine& engine,
                         std::function<void(DrillNote)> deliver)
    : book_(book), sound_(sound), engine_(engine), deliver_(std::move(deliver)) {}

void DrillReader::expect(const DrilledPassage& drilled) {
    const std::lock_guard lock(mutex_);
    expected_.push_back(drilled);
}

void DrillReader::forget() {
    const std::lock_guard lock(mutex_);
    expected_.pop_back();
}

bool DrillReader::poll() {
    engine::Event event;
    bool any = false;
    for (; engine_.read(event); any = true) take({event, sound_.nowNanos(), {}});
    return any;
}

void DrillReader::noteSounding(engine::Event::Kind kind) {
    using Kind = engine::Event::Kind;
    if (kind == Kind::started || kind == Kind::stopped) drill_ = kind == Kind::started;
    if (kind == Kind::playbackBegan || kind == Kind::playbackEnded) playback_ = kind == Kind::playbackBegan;
    if (kind == Kind::clickBegan || kind == Kind::clickEnded) click_ = kind == Kind::clickBegan;
}

void DrillReader::take(DrillNote note) {
    using Kind = engine::Event::Kind;
    const engine::Event& event = note.event;
    noteSounding(event.kind);
    if (event.kind == Kind::started) begin();
    if (event.kind == Kind::runBegan) {
        runBeganNanos_ = note.decidedNanos;
        spots_.clear();
    }
    if (event.kind == Kind::missMarked) spots_.push_back(spotOf(event));
    if (event.kind == Kind::withdrawn && event.run != 0 && !spots_.empty()) spots_.pop_back();
    note.fact = journal(note);
    deliver_(std::move(note));
}

void DrillReader::begin() {
    const std::lock_guard lock(mutex_);
    spots_.clear();
    if (expected_.empty()) return;
    present_ = expected_.front();
    expected_.erase(expected_.begin());
}

std::optional<Fact> DrillReader::journal(const DrillNote& note) {
    if (note.event.kind == engine::Event::Kind::runEnded) return journalRun(note);
    if (note.event.kind == engine::Event::Kind::lateMiss) return journalLateMiss(note.event);
    return std::nullopt;
}

std::optional<Fact> DrillReader::journalRun(const DrillNote& note) {
    const engine::Event& event = note.event;
    RunFact run;
    run.passage = present_.passage;
    run.tempo = event.tempo;
    run.mark = event.mark;
    run.reason = reasonOf(event.voidReason);
    run.kind = present_.kind;
    run.millis = std::clamp<std::int64_t>((note.decidedNanos - runBeganNanos_) / 1'000'000,
                                          playingMillis.least, playingMillis.most);
    run.spots = std::exchange(spots_, {});
    if (event.mark == Mark::missed && run.spots.empty() && event.bar != engine::noBar)
        run.spots = {spotOf(event)};
    Fact fact = book_.write(std::move(run));
    runs_[event.run] = {present_.passage, fact.id};
    if (runs_.size() > engine::RunHistory::capacity) runs_.erase(runs_.begin());
    return fact;
}

std::optional<Fact> DrillReader::journalLateMiss(const engine::Event& event) {
    const auto run = runs_.find(event.run);
    if (run == runs_.end()) return std::nullopt;
    return book_.write(LateMissFact{run->second.passage, run->second.fact});
}

Spot DrillReader::spotOf(const engine::Event& event) const {
    return {present_.firstBar + event.bar, event.beat + 1, event.thousandth};
}

} // namespace piolo::practice
