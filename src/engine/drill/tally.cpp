// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/tally.h"

namespace piolo::engine {

namespace {

constexpr std::int32_t missesToPause = 3;
constexpr std::int32_t dropsToPause = 2;

} // namespace

Outcome Tally::add(Tempo played, Mark mark, const DrillPlan& plan) noexcept {
    Outcome outcome;
    outcome.after = standing;
    if (plan.apart) return outcome;
    outcome = afterRun(standing, played, mark, plan.rule);
    standing = outcome.after;
    if (mark == Mark::clean) misses = 0;
    if (mark == Mark::missed) ++misses;
    if (outcome.climbed) dropsBelowStart = 0;
    if (outcome.dropped && standing.tempo < plan.start) ++dropsBelowStart;
    return outcome;
}

std::optional<Pause> Tally::pauseDue(std::int32_t runsWithoutKey, const DrillPlan& plan) const noexcept {
    if (misses >= missesToPause) return Pause::threeMisses;
    if (dropsBelowStart >= dropsToPause) return Pause::belowStart;
    if (plan.pauseAfterRuns > 0 && runsWithoutKey >= plan.pauseAfterRuns) return Pause::noKey;
    return std::nullopt;
}

void Tally::forgetMisses() noexcept {
    misses = 0;
    dropsBelowStart = 0;
}

} // namespace piolo::engine
