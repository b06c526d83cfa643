// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/duration.h"

namespace piolo {

namespace {

/// A length in beats as numerator/denominator, wide enough for any passage.
struct Beats {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
};

Fraction pickupBeats(const Music& music) noexcept {
    return ratio(music.pickup, fractionOf(music.meter.beat()));
}

Beats runBeats(const Music& music) noexcept {
    const Fraction pickup = pickupBeats(music);
    const std::int64_t whole = std::int64_t{music.bars} * music.meter.beatsPerBar() + (music.landing ? 1 : 0);
    return {whole * pickup.denominator + pickup.numerator, pickup.denominator};
}

/// Count-in and breath. Before a pick-up, the count-in includes the beats of its bar that are not played.
Beats restBeats(const Music& music) noexcept {
    const Fraction pickup = pickupBeats(music);
    std::int64_t whole = std::int64_t{music.countInBars} * music.meter.beatsPerBar() + music.breathBeats;
    if (pickup.numerator == 0) return {whole, 1};
    whole += music.meter.beatsPerBar();
    return {whole * pickup.denominator - pickup.numerator, pickup.denominator};
}

std::int64_t millis(Beats beats, Tempo tempo) noexcept {
    const std::int64_t below = beats.denominator * tempo.thousandths();
    return (beats.numerator * 60'000'000 + below / 2) / below;
}

Beats sum(Beats a, Beats b) noexcept {
    return {a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator};
}

} // namespace

std::int64_t runMillis(const Music& music, Tempo tempo) noexcept {
    if (music.bars == 0) return 0;
    return millis(runBeats(music), tempo);
}

std::int64_t cycleMillis(const Music& music, Tempo tempo) noexcept {
    if (music.bars == 0) return 0;
    return millis(sum(runBeats(music), restBeats(music)), tempo);
}

std::int64_t millisToTarget(const Music& music, const Rule& rule, Standing standing) noexcept {
    if (music.bars == 0) return 0;
    std::int64_t total = 0;
    for (;;) {
        total += cycleMillis(music, standing.tempo);
        const Outcome outcome = afterClean(standing, rule);
        if (outcome.fullStreak && !outcome.climbed) return total;
        standing = outcome.after;
    }
}

int proposedCleanRuns(std::int64_t runMillis) noexcept {
    if (runMillis <= 20'000) return 5;
    if (runMillis <= 40'000) return 3;
    return 0;
}

} // namespace piolo
