// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/drill.h"

namespace piolo::engine {

/// The count-in and a run, starting at `tick` in the current tempo.
void Drill::startAgain(std::uint64_t tick) noexcept {
    cues_.clear();
    announce(timeline_.sampleOf(tick));
    enterCountIn(timeline_.turn(tick, tally_.standing.tempo));
}

void Drill::enterGap(std::uint64_t tick, std::uint64_t ticks) noexcept {
    if (ticks == 0) {
        enterCountIn(tick);
        return;
    }
    Section gap;
    gap.start = tick;
    gap.end = tick + ticks;
    timeline_.enter(gap);
}

void Drill::enterCountIn(std::uint64_t tick) noexcept {
    if (measure_.countIn == 0) {
        enterRun(tick);
        return;
    }
    Section countIn;
    countIn.phase = Phase::countIn;
    countIn.start = tick;
    countIn.end = tick + measure_.countIn;
    timeline_.enter(countIn);
}

void Drill::enterRun(std::uint64_t tick) noexcept {
    Section run;
    run.phase = Phase::run;
    run.start = tick;
    run.offset = measure_.lead;
    run.firstBar = measure_.pickup > 0 ? -1 : 0;
    run.breathes = timeline_.tempo() < plan_.breaths.below && !measure_.waits.none();
    if (plan_.bars > 0) {
        run.end = tick + measure_.pickup + measure_.bars + (run.breathes ? measure_.waits.total() : 0);
        if (plan_.landing) run.landing = run.end;
        run.end += landingTicks(run.end);
    }
    timeline_.enter(run);
}

/// One beat, unless the landing note, at `end`, is the first downbeat of the next run.
std::uint64_t Drill::landingTicks(std::uint64_t end) const noexcept {
    if (!plan_.landing) return 0;
    const bool pausesAfter = plan_.pauseAfterRuns > 0 && runsWithoutKey_ + 1 >= plan_.pauseAfterRuns;
    const bool endsTurn = watch_.endsWith(timeline_.sampleOf(end));
    return isGapless(plan_) && !plan_.once && !pausesAfter && !endsTurn ? 0 : measure_.perBeat;
}

void Drill::endRun(Mark mark, VoidReason reason, std::uint64_t sample) noexcept {
    run_.endedAt = sample;
    run_.mark = mark;
    run_.before = tally_;
    const auto outcome = tally_.add(run_.grid.tempo, mark, plan_);
    if (mark != Mark::voided) watch_.countRun(sample);
    history_.add(run_);
    ++runsEnded_;
    auto sent = event(Event::Kind::runEnded, sample);
    sent.run = run_.number;
    sent.tempo = run_.grid.tempo;
    sent.before = run_.before.standing;
    sent.mark = mark;
    sent.press = mark == Mark::missed ? run_.markedBy : 0;
    sent.voidReason = reason;
    sent.bar = run_.missedAt.bar;
    sent.beat = run_.missedAt.beat;
    sent.thousandth = run_.missedAt.thousandth;
    sent.fullStreak = outcome.fullStreak;
    sent.secure = outcome.secure;
    sender_.send(sent);
    if (outcome.climbed || outcome.dropped) sender_.send(event(Event::Kind::tempoMoved, sample));
}

/// Ends the current run as void. False if that ends the drill because it was the only run.
bool Drill::goesOnWithout(VoidReason reason, std::uint64_t sample) noexcept {
    endRun(Mark::voided, reason, sample);
    if (plan_.once) halt(sample);
    return !plan_.once;
}

/// What follows at `tick` after a run that ended clean or missed.
void Drill::follow(std::uint64_t tick, bool missed) noexcept {
    const auto sample = timeline_.sampleOf(tick);
    if (plan_.once) {
        halt(sample);
        return;
    }
    cues_.clear();
    if (tally_.standing.tempo > timeline_.tempo()) cues_.add(sample, Cue::rise);
    if (tally_.standing.tempo < timeline_.tempo()) cues_.add(sample, Cue::fall);
    const auto why = tally_.pauseDue(runsWithoutKey_, plan_);
    if (why || sender_.isCrowded()) {
        pause(why.value_or(Pause::noKey), sample);
        return;
    }
    if (watch_.isOver()) {
        endTurn(sample);
        return;
    }
    announce(sample);
    const auto silentBars =
        gapBarsAfterMiss(plan_, tally_.standing.tempo) - static_cast<std::uint64_t>(plan_.countInBars);
    enterGap(timeline_.turn(tick, tally_.standing.tempo),
             missed ? silentBars * measure_.bar : measure_.breath);
}

void Drill::pause(Pause why, std::uint64_t sample) noexcept {
    mode_ = Mode::paused;
    tally_.forgetMisses();
    runsWithoutKey_ = 0;
    pausedBy_ = press_;
    watch_.pause(sample);
    auto sent = event(Event::Kind::paused, sample);
    sent.pause = why;
    sender_.send(sent);
}

void Drill::halt(std::uint64_t sample) noexcept {
    mode_ = Mode::idle;
    cues_.clear();
    tones_.clear();
    sender_.send(event(Event::Kind::stopped, sample));
}

/// Announces that the next run would complete the streak: at once, or a little later if another cue sounds.
void Drill::announce(std::uint64_t sample) noexcept {
    if (plan_.apart || tally_.standing.streak + 1 != plan_.rule.cleanRuns) return;
    const bool another = cues_.nextSample() == sample;
    const auto later = static_cast<std::uint64_t>(timeline_.grid().rate.hertz * 2 / 5);
    cues_.add(another ? sample + later : sample, Cue::lastOfStreak);
}

/// Keeps the grid: a run that could not be heard is void, everything else continues.
void Drill::soundLost() noexcept {
    if (!timeline_.inRun()) return;
    const auto bar = timeline_.nextBar();
    if (!goesOnWithout(VoidReason::soundLost, now_)) return;
    startAgain(bar);
}

/// The time to the next bar is converted to the new rate; from there on nothing is rounded.
void Drill::changeRate(SampleRate rate) noexcept {
    const auto bar = timeline_.sampleOf(timeline_.nextBar());
    if (timeline_.inRun() && !goesOnWithout(VoidReason::soundLost, now_)) return;
    const auto way = (bar - now_) * static_cast<std::uint64_t>(rate.hertz) /
                     static_cast<std::uint64_t>(timeline_.grid().rate.hertz);
    tones_.clear();
    watch_.resume(now_, rate);
    timeline_.begin({now_ + way, 0}, tally_.standing.tempo, rate, measure_);
    startAgain(0);
}

} // namespace piolo::engine
