// SPDX-License-Identifier: GPL-3.0-or-later
#include "stage_runs.h"

#include "core/rule/build_up.h"
#include "core/rule/stage_step.h"
#include "core/time/duration.h"

namespace piolo::samples {

namespace {

constexpr std::int64_t breath = 4'000;
constexpr std::int64_t harderInStages =
    -12; // without the click, a passage feels slower by this many thousandths

} // namespace

StageRuns::StageRuns(const Lot& lot, Learner& learner, Diary& diary, WallClock& clock, Seeded& random,
                     std::int64_t form)
    : lot_(lot), learner_(learner), diary_(diary), clock_(clock), random_(random), form_(form) {}

void StageRuns::play() {
    const Music& music = lot_.passage.music;
    const auto piece = diary_.notebook().piece(lot_.passage.title.piece);
    if (record().stage == Stage::withoutClick) playSome(RunKind::silent, music);
    if (record().stage == Stage::inContext)
        playSome(RunKind::context, inContext(music, piece ? piece->bars : 0));
    goOn();
}

void StageRuns::playSome(RunKind kind, const Music& music) {
    for (std::int64_t left = random_.between(3, 5); left > 0; --left) run(kind, music);
}

void StageRuns::run(RunKind kind, const Music& music) {
    const Tempo target = lot_.passage.tempi.rule.target;
    RunFact played{lot_.passage.id, target, Mark::clean, Reason::none, kind, runMillis(music, target), {}};
    if (!random_.chance(learner_.cleanPerMille(target, form_ + harderInStages))) {
        played.mark = Mark::missed;
        played.spots = {lot_.difficulty.hard};
        played.millis = played.millis * random_.between(30, 80) / 100;
    }
    learner_.played(clock_.today());
    clock_.pass(breath + played.millis);
    diary_.record(played);
}

void StageRuns::goOn() {
    const Stage present = record().stage;
    const auto throughs = diary_.notebook().runThroughs(lot_.passage.title.piece);
    const StageStep step = nextStep(record(), throughs, diary_.notebook().settings());
    if (present == lot_.furthest || !step.reached() || !random_.chance(800)) return;
    clock_.pass(random_.between(4'000, 12'000));
    diary_.record(StageFact{lot_.passage.id, step.next});
}

const PassageRecord& StageRuns::record() const { return *diary_.notebook().passage(lot_.passage.id); }

} // namespace piolo::samples
