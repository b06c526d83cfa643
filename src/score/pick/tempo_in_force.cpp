// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/pick/tempo_in_force.h"

#include "core/time/fraction_sum.h"

namespace piolo::score {

namespace {

struct Speed {
    std::int64_t perMinute = 0; ///< thousandths
    Fraction beat;              ///< the note value that is counted
};

std::optional<Speed> speedOf(const TempoMark& mark) {
    if (mark.beat && mark.perMinute) return Speed{*mark.perMinute, *mark.beat};
    if (mark.quarters) return Speed{*mark.quarters, {1, 4}};
    return std::nullopt;
}

/// A speed has at most nine digits and note values are small, so the products fit.
std::int64_t scaled(const Speed& speed, Fraction beat) {
    const Fraction times = ratio(speed.beat, beat);
    return (2 * speed.perMinute * times.numerator + times.denominator) /
           (2 * std::int64_t{times.denominator});
}

} // namespace

const TempoMark* markInForce(const Score& score, std::size_t bar) {
    const TempoMark* found = nullptr;
    for (const TempoMark& mark : score.tempi) {
        if (mark.bar > bar || (mark.bar == bar && !mark.onset.isZero())) break;
        if (speedOf(mark) || found == nullptr) found = &mark;
    }
    return found;
}

bool isInside(const TempoMark& mark, Stretch stretch) {
    if (mark.bar < stretch.first || mark.bar > stretch.last) return false;
    return mark.bar > stretch.first || !mark.onset.isZero();
}

bool isSameTempo(const TempoMark* before, const TempoMark& mark) {
    if (before == nullptr) return false;
    const auto a = speedOf(*before);
    const auto b = speedOf(mark);
    return a && b && scaled(*a, {1, 4}) == scaled(*b, {1, 4});
}

std::optional<BeatUnit> printedBeat(const TempoMark& mark) {
    if (!mark.beat) return std::nullopt;
    const auto unit = parseBeatUnit(mark.beat->text());
    return unit ? std::optional(*unit) : std::nullopt;
}

std::optional<Tempo> tempoIn(const TempoMark& mark, BeatUnit beat) {
    const auto speed = speedOf(mark);
    if (!speed) return std::nullopt;
    return Tempo::fromThousandths(scaled(*speed, fractionOf(beat)));
}

} // namespace piolo::score
