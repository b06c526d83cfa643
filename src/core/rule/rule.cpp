// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/rule.h"

#include "core/time/metronome_scale.h"

#include <algorithm>

namespace piolo {

Outcome afterClean(Standing before, const Rule& rule) noexcept {
    Outcome outcome;
    outcome.after = {before.tempo, before.streak + 1};
    if (outcome.after.streak < rule.cleanRuns) return outcome;
    outcome.fullStreak = true;
    outcome.after.streak = 0;
    if (before.tempo >= rule.target) {
        outcome.secure = true;
        return outcome;
    }
    outcome.after.tempo = std::min(stepUp(before.tempo, rule.step, rule.climb), rule.target);
    outcome.climbed = true;
    return outcome;
}

namespace {

/// How far a miss drops.
std::int32_t dropFrom(Tempo tempo, const Rule& rule) noexcept {
    if (!rule.gentle) return rule.drop;
    const Tempo twoAbove = stepUp(stepUp(tempo, rule.step, rule.climb), rule.step, rule.climb);
    return twoAbove >= rule.target ? rule.climb : rule.drop;
}

} // namespace

Outcome afterMiss(Standing before, const Rule& rule) noexcept {
    Outcome outcome;
    outcome.after = {before.tempo, 0};
    if (before.tempo <= rule.floor) return outcome;
    if (rule.gentle && before.tempo >= rule.target && !before.spared) {
        outcome.after.spared = true;
        return outcome;
    }
    const std::int32_t drop = dropFrom(before.tempo, rule);
    outcome.after.tempo = std::max(stepDown(before.tempo, rule.step, drop), rule.floor);
    outcome.dropped = true;
    return outcome;
}

Outcome afterRun(Standing before, Tempo played, Mark mark, const Rule& rule) noexcept {
    if (mark == Mark::voided) {
        Outcome nothing;
        nothing.after = before;
        return nothing;
    }
    const Standing standing = played == before.tempo ? before : handSet(played);
    return mark == Mark::clean ? afterClean(standing, rule) : afterMiss(standing, rule);
}

Standing handSet(Tempo tempo) noexcept { return {tempo, 0}; }

Standing edited(Standing before, const Rule& rule) noexcept {
    const Tempo inside = std::min(std::max(before.tempo, rule.floor), rule.target);
    if (inside != before.tempo) return handSet(inside);
    before.spared = before.spared && rule.gentle && inside >= rule.target;
    return before;
}

Tempo stepUp(Tempo from, StepKind kind, std::int32_t size) noexcept {
    if (kind == StepKind::bpm)
        return Tempo::clampedThousandths(from.thousandths() + std::int64_t{size} * 1000);
    for (std::int32_t notch = 0; notch < size; ++notch) from = notchAbove(from);
    return from;
}

Tempo stepDown(Tempo from, StepKind kind, std::int32_t size) noexcept {
    if (kind == StepKind::bpm)
        return Tempo::clampedThousandths(from.thousandths() - std::int64_t{size} * 1000);
    for (std::int32_t notch = 0; notch < size; ++notch) from = notchBelow(from);
    return from;
}

} // namespace piolo
