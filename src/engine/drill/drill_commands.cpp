// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/drill.h"

#include <algorithm>

namespace piolo::engine {

void Drill::obey(const Command& command) noexcept {
    switch (command.kind) {
    case Command::Kind::start:
        start(command.plan);
        break;
    case Command::Kind::miss:
        press(command);
        break;
    case Command::Kind::withdraw:
        withdraw(command.press);
        break;
    case Command::Kind::clean:
        clean(command.sample);
        break;
    case Command::Kind::stop:
        stop();
        break;
    case Command::Kind::resume:
        resume();
        break;
    case Command::Kind::adopt:
        adopt(command);
        break;
    case Command::Kind::setMix:
        mix_ = command.mix;
        break;
    case Command::Kind::hear:
    case Command::Kind::click:
    case Command::Kind::endClick:
        break; // handled by the playback and by the click without a passage
    }
}

void Drill::start(const DrillPlan& plan) noexcept {
    if (mode_ == Mode::running && timeline_.inRun()) endRun(Mark::voided, VoidReason::stopped, now_);
    plan_ = inRange(plan);
    measure_ = DrillMeasure::of(plan_);
    tally_ = {plan_.standing};
    const auto countIn = beginTurn();
    mode_ = Mode::running;
    timeline_.begin({countIn, 0}, tally_.standing.tempo, rate_, measure_);
    startAgain(0);
    sender_.send(event(Event::Kind::started, now_));
}

void Drill::stop() noexcept {
    if (mode_ == Mode::idle) return;
    if (mode_ == Mode::running && timeline_.inRun()) endRun(Mark::voided, VoidReason::stopped, now_);
    halt(now_);
}

void Drill::resume() noexcept {
    if (mode_ != Mode::paused) return;
    mode_ = Mode::running;
    tally_.forgetMisses();
    history_.close(); // the pause already asked about the earlier runs
    watch_.resume(now_, rate_);
    timeline_.begin({now_, 0}, tally_.standing.tempo, rate_, measure_);
    startAgain(0);
    sender_.send(event(Event::Kind::resumed, now_));
    if (watch_.isOver()) endTurn(now_);
}

bool Drill::isInPresentRun(std::uint64_t sample) const noexcept {
    return mode_ == Mode::running && timeline_.inRun() && sample >= run_.ownFrom;
}

void Drill::press(const Command& command) noexcept {
    press_ = command.press;
    miss(command.sample);
    press_ = 0;
}

void Drill::miss(std::uint64_t sample) noexcept {
    runsWithoutKey_ = 0;
    sample = std::min(sample, now_);
    if (isInPresentRun(sample)) {
        missInside(sample);
        return;
    }
    auto* run = history_.ownerOf(sample);
    if (run == nullptr || run->mark != Mark::clean || run->closed) return;
    if (run->earlier) return missEarlier(*run);
    // While stopped or paused, a press counts only for what was still audible when the key was pressed.
    if (mode_ == Mode::running || sample < run->endedAt) missLate(*run, sample);
}

void Drill::missInside(std::uint64_t sample) noexcept {
    const auto place = placeAt(sample, timeline_.section(), timeline_.grid(), measure_);
    if (run_.mark == Mark::clean) {
        run_.missedAt = place;
        run_.markedBy = press_;
    }
    if (!plan_.playOn) {
        const auto tick = timeline_.nextPulse();
        endRun(Mark::missed, VoidReason::none, timeline_.sampleOf(tick));
        follow(tick, true);
        return;
    }
    // A gap follows now, so the landing note cannot be the next run's first note.
    const auto& section = timeline_.section();
    const bool landsInTheNext = plan_.bars > 0 && section.landing == section.end;
    if (landsInTheNext) {
        timeline_.extend(measure_.perBeat);
        run_.landsLonger = true;
    }
    run_.mark = Mark::missed;
    run_.lastPress = press_;
    ++run_.presses;
    auto sent = event(Event::Kind::missMarked, sample);
    sent.run = run_.number;
    sent.bar = place.bar;
    sent.beat = place.beat;
    sent.thousandth = place.thousandth;
    sender_.send(sent);
}

void Drill::missLate(RunRecord& run, std::uint64_t sample) noexcept {
    const auto was = tally_.standing;
    tally_ = history_.missedAfterAll(run, plan_);
    ++runsEnded_;
    auto sent = event(Event::Kind::lateMiss, now_);
    sent.run = run.number;
    sent.tempo = run.grid.tempo;
    sent.before = run.before.standing;
    sent.mark = Mark::missed;
    sent.press = press_;
    if (sample < run.endedAt) {
        const auto place = placeAt(sample, run.section, run.grid, measure_);
        sent.bar = place.bar;
        sent.beat = place.beat;
        sent.thousandth = place.thousandth;
    }
    sender_.send(sent);
    if (tally_.standing.tempo != was.tempo) sender_.send(event(Event::Kind::tempoMoved, now_));
    if (mode_ == Mode::running) follow(timeline_.nextPulse(), true);
}

void Drill::withdraw(std::uint64_t press) noexcept {
    auto sent = event(Event::Kind::withdrawn, now_);
    sent.press = press;
    if (press > 0 && timeline_.inRun() && mode_ == Mode::running && run_.presses > 0 &&
        run_.lastPress == press) {
        sent.run = run_.number;
        unmark();
    }
    sender_.send(sent);
    if (press > 0 && mode_ == Mode::paused && pausedBy_ == press) resume();
}

/// Withdraws the newest press inside the current run.
void Drill::unmark() noexcept {
    run_.lastPress = 0;
    if (--run_.presses > 0) return;
    run_.mark = Mark::clean;
    run_.markedBy = 0;
    const auto end = timeline_.section().end;
    if (run_.landsLonger && now_ < timeline_.sampleOf(end - measure_.perBeat)) {
        timeline_.shorten(measure_.perBeat);
        run_.landsLonger = false;
    }
}

void Drill::clean(std::uint64_t sample) noexcept {
    runsWithoutKey_ = 0;
    if (plan_.bars > 0 || !isInPresentRun(std::min(sample, now_))) return;
    const auto tick = timeline_.nextPulse();
    const auto mark = run_.mark;
    endRun(mark, VoidReason::none, timeline_.sampleOf(tick));
    follow(tick, mark == Mark::missed);
}

void Drill::adopt(const Command& command) noexcept {
    if (command.runsEnded != runsEnded_) {
        sender_.send(event(Event::Kind::adoptRefused, now_));
        return;
    }
    const auto was = tally_.standing;
    const bool moves = command.standing.tempo != was.tempo;
    const auto tick = timeline_.nextPulse();
    if (!plan_.apart) {
        if (moves && mode_ == Mode::running && timeline_.inRun())
            endRun(Mark::voided, VoidReason::tempoChanged, timeline_.sampleOf(tick));
        tally_ = {command.standing};
        runsWithoutKey_ = 0;
        history_.close();
    }
    sender_.send(event(Event::Kind::adopted, now_));
    if (tally_.standing == was) return;
    if (moves) sender_.send(event(Event::Kind::tempoMoved, now_));
    if (mode_ == Mode::running) followAdopted(tick, moves);
}

void Drill::followAdopted(std::uint64_t tick, bool moves) noexcept {
    if (moves) {
        startAgain(tick);
    } else if (!timeline_.inRun()) {
        cues_.clear();
        announce(timeline_.hasBegun() ? now_ : timeline_.nextSample());
    }
}

} // namespace piolo::engine
