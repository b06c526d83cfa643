// SPDX-License-Identifier: GPL-3.0-or-later
#include "sitting.h"

#include "core/time/duration.h"

#include <algorithm>
#include <utility>

namespace piolo::samples {

namespace {

constexpr std::int64_t gapAfterMiss = 4'000;
constexpr std::int64_t easy = 960; // clean runs per thousand

} // namespace

Sitting::Sitting(const Lot& lot, Learner& learner, Diary& diary, WallClock& clock, Seeded& random,
                 std::int64_t form)
    : lot_(lot), learner_(learner), diary_(diary), clock_(clock), random_(random), form_(form) {}

void Sitting::play() {
    openDay();
    // A passage past the stages with the click needs less drilling.
    const std::int64_t wanted = stage() > Stage::secure ? lot_.runs / 3 : lot_.runs;
    const std::int64_t runs = random_.between(wanted * 2 / 3, wanted * 4 / 3);
    for (std::int64_t i = 0; i < runs; ++i) run();
    const Tempo target = lot_.passage.tempi.rule.target;
    const bool near = standing().tempo.thousandths() * 100 >= target.thousandths() * 90;
    if (near && random_.chance(350)) tryTarget();
}

void Sitting::openDay() {
    const auto opening = diary_.notebook().opening(lot_.passage.id, clock_.today());
    if (opening) diary_.record(TempoFact{lot_.passage.id, *opening, Reason::newDay});
}

void Sitting::run() {
    const Tempo tempo = standing().tempo;
    const std::int64_t millis = runMillis(lot_.passage.music, tempo);
    clock_.pass(rest());
    if (random_.chance(12)) return stopInside(millis);
    if (random_.chance(8)) return wrongKey(millis);
    const bool isClean = random_.chance(learner_.cleanPerMille(tempo, form_));
    learner_.played(clock_.today());
    missesInARow_ = isClean ? 0 : missesInARow_ + 1;
    if (isClean) return clean(millis);
    easyStreaks_ = 0;
    if (random_.chance(120)) return lateMiss(millis);
    miss();
    if (missesInARow_ == 3) comeDown();
}

void Sitting::clean(std::int64_t millis) {
    clock_.pass(millis);
    record(Mark::clean, Reason::none, millis);
    if (standing().streak != 0 || ++easyStreaks_ < 2) return;
    easyStreaks_ = 0;
    goUp();
}

/// After two streaks without a miss that still felt easy, the player raises the tempo without waiting for the
/// rule.
void Sitting::goUp() {
    const Rule& rule = lot_.passage.tempi.rule;
    const Tempo faster = std::min(rule.target, stepUp(standing().tempo, rule.step, 2 * rule.climb));
    if (faster <= standing().tempo || learner_.cleanPerMille(faster, form_) < easy) return;
    clock_.pass(random_.between(3'000, 9'000));
    diary_.record(TempoFact{lot_.passage.id, faster, Reason::hand});
}

void Sitting::miss() {
    const Spot spot = placeOfMiss();
    const std::int64_t played = millisTo(spot);
    clock_.pass(played);
    record(Mark::missed, Reason::none, played, {spot});
    clock_.pass(gapAfterMiss);
}

void Sitting::lateMiss(std::int64_t millis) {
    clock_.pass(millis);
    const Id late = record(Mark::clean, Reason::none, millis);
    clock_.pass(random_.between(400, 1'500));
    diary_.record(LateMissFact{lot_.passage.id, late});
}

void Sitting::stopInside(std::int64_t millis) {
    const std::int64_t played = millis * random_.between(20, 80) / 100;
    clock_.pass(played);
    record(Mark::voided, Reason::stopped, played);
    clock_.pass(random_.between(8'000, 60'000));
}

/// The player touched the pedal by mistake, takes back the mark and plays the run again.
void Sitting::wrongKey(std::int64_t millis) {
    const std::int64_t played = millis * random_.between(10, 90) / 100;
    clock_.pass(played);
    const Id wrong = record(Mark::missed, Reason::none, played, {placeOfMiss()});
    clock_.pass(random_.between(1'500, 3'500));
    diary_.record(BackFact{lot_.passage.id, wrong});
}

/// Three misses without a clean run: a short break, then slower by hand.
void Sitting::comeDown() {
    missesInARow_ = 0;
    const Rule& rule = lot_.passage.tempi.rule;
    const Tempo slower = stepDown(standing().tempo, rule.step, 2 * rule.climb);
    if (slower < rule.floor) return;
    clock_.pass(random_.between(10'000, 40'000));
    diary_.record(TempoFact{lot_.passage.id, slower, Reason::hand});
}

void Sitting::tryTarget() {
    const Tempo target = lot_.passage.tempi.rule.target;
    const std::int64_t millis = runMillis(lot_.passage.music, target);
    clock_.pass(rest());
    const bool isClean = random_.chance(learner_.cleanPerMille(target, form_));
    learner_.played(clock_.today());
    RunFact attempt{lot_.passage.id, target, Mark::clean, Reason::none, RunKind::attempt, millis, {}};
    if (!isClean) {
        attempt.mark = Mark::missed;
        attempt.spots = {placeOfMiss()};
        attempt.millis =
            millisTo(attempt.spots.front()) * standing().tempo.thousandths() / target.thousandths();
    }
    clock_.pass(attempt.millis);
    diary_.record(attempt);
}

Id Sitting::record(Mark mark, Reason reason, std::int64_t millis, std::vector<Spot> spots) {
    return diary_.record(
        RunFact{lot_.passage.id, standing().tempo, mark, reason, RunKind::run, millis, std::move(spots)});
}

Spot Sitting::placeOfMiss() {
    const Music& music = lot_.passage.music;
    if (random_.chance(600)) return lot_.difficulty.hard;
    return {static_cast<std::int32_t>(music.firstBar + random_.below(music.bars)),
            static_cast<std::int32_t>(1 + random_.below(music.meter.beatsPerBar()))};
}

std::int64_t Sitting::millisTo(Spot spot) const {
    const Music& music = lot_.passage.music;
    const std::int64_t beats =
        std::int64_t{spot.bar - music.firstBar} * music.meter.beatsPerBar() + spot.beat;
    return beats * 60'000'000 / standing().tempo.thousandths();
}

Stage Sitting::stage() const { return diary_.notebook().passage(lot_.passage.id)->stage; }

Standing Sitting::standing() const { return diary_.notebook().passage(lot_.passage.id)->standing; }

std::int64_t Sitting::rest() const {
    const Music& music = lot_.passage.music;
    const Tempo tempo = standing().tempo;
    return cycleMillis(music, tempo) - runMillis(music, tempo);
}

} // namespace piolo::samples
