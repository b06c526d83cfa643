// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/drill_measure.h"

#include <algorithm>

namespace piolo::engine {

namespace {

std::uint64_t ticks(std::int64_t count) noexcept { return static_cast<std::uint64_t>(count); }

bool fits(Fraction pickup, std::int32_t beats) noexcept {
    return pickup.numerator > 0 && pickup.denominator > 0 && pickup.denominator <= 999 &&
           pickup.numerator < std::int64_t{beats} * pickup.denominator;
}

/// The waits inside the run: after its first note, up to the landing note.
Waits waitsOf(const DrillPlan& plan, const DrillMeasure& measure) noexcept {
    const std::int64_t barsBefore = measure.pickup > 0 ? 1 : 0;
    const auto last = ticks(barsBefore) * measure.bar + measure.bars;
    Waits waits;
    for (std::size_t i = 0; i < plan.breaths.count; ++i) {
        const auto& place = plan.breaths.places[i];
        if (place.bar + barsBefore < 0 || place.beat >= plan.beatsPerBar) continue;
        const auto at = ticks(place.bar + barsBefore) * measure.bar + ticks(place.beat) * measure.perBeat;
        const bool inside = plan.bars == 0 || at < last || (plan.landing && at == last);
        if (at > measure.lead && inside) waits.add({at, ticks(place.beats) * measure.perBeat});
    }
    return waits;
}

Rule inRange(Rule rule) noexcept {
    rule.drop = std::clamp(rule.drop, 1, 100);
    rule.climb = std::clamp(rule.climb, 1, 100);
    rule.cleanRuns = std::clamp(rule.cleanRuns, 1, 100);
    return rule;
}

} // namespace

DrillMeasure DrillMeasure::of(const DrillPlan& plan) noexcept {
    DrillMeasure measure;
    measure.parts = BeatParts::of(plan.subdivision, plan.swing, plan.pickupBeats.denominator);
    measure.perBeat = measure.parts.perBeat;
    measure.bar = measure.perBeat * ticks(plan.beatsPerBar);
    measure.pickup =
        measure.perBeat * ticks(plan.pickupBeats.numerator) / ticks(plan.pickupBeats.denominator);
    measure.lead = measure.pickup == 0 ? 0 : measure.bar - measure.pickup;
    measure.countIn = measure.bar * ticks(plan.countInBars) + measure.lead;
    measure.breath = measure.perBeat * ticks(plan.breathBeats);
    measure.bars = measure.bar * ticks(plan.bars);
    measure.waits = waitsOf(plan, measure);
    return measure;
}

DrillPlan inRange(DrillPlan plan) noexcept {
    plan.beatsPerBar = std::clamp(plan.beatsPerBar, 1, 32);
    plan.groupStarts |= 1U;
    plan.subdivision = std::clamp(plan.subdivision, 1, 8);
    plan.swing = plan.subdivision % 2 == 0 && isSwing(plan.swing) ? plan.swing.reduced() : Fraction{1, 1};
    plan.click = plan.click.inRange();
    plan.breaths = plan.breaths.inRange();
    plan.bars = std::clamp(plan.bars, 0, 999);
    plan.countInBars = std::clamp(plan.countInBars, 0, 4);
    plan.breathBeats = std::clamp(plan.breathBeats, 0, 8);
    plan.gapMillisAfterMiss = std::clamp(plan.gapMillisAfterMiss, 0, 30'000);
    plan.pauseAfterRuns = std::max(plan.pauseAfterRuns, 0);
    plan.rule = inRange(plan.rule);
    plan.turn = inRange(plan.turn);
    plan.pickupBeats = fits(plan.pickupBeats, plan.beatsPerBar) ? plan.pickupBeats.reduced() : Fraction{0, 1};
    return plan;
}

bool isGapless(const DrillPlan& plan) noexcept {
    return plan.countInBars == 0 && plan.breathBeats == 0 && plan.pickupBeats.isZero();
}

std::uint64_t gapBarsAfterMiss(const DrillPlan& plan, Tempo tempo) noexcept {
    const std::int64_t beats = plan.beatsPerBar;
    const std::int64_t barTimesTempo = beats * 60'000'000; // a bar in milliseconds, times thousandths of a
                                                           // BPM
    const std::int64_t wanted = std::int64_t{plan.gapMillisAfterMiss} * tempo.thousandths();
    const std::int64_t forSetting = (wanted + barTimesTempo - 1) / barTimesTempo;
    const std::int64_t forBreath = plan.countInBars + (plan.breathBeats + beats - 1) / beats;
    return ticks(std::max(forSetting, forBreath));
}

} // namespace piolo::engine
