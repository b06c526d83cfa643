// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/metronome_scale.h"

namespace piolo {

namespace {

constexpr std::int64_t stepBelow = 2000;
constexpr std::int64_t stepAbove = 8000;
constexpr std::int64_t lowest = metronomeScale.front() * std::int64_t{1000};
constexpr std::int64_t highest = metronomeScale.back() * std::int64_t{1000};

} // namespace

Tempo notchAbove(Tempo from) noexcept {
    const std::int64_t at = from.thousandths();
    // Both ends of the range are on the extended scale, so counting from 0 and from the highest mark is
    // exact.
    if (at < lowest) return Tempo::clampedThousandths((at / stepBelow + 1) * stepBelow);
    if (at >= highest)
        return Tempo::clampedThousandths(highest + ((at - highest) / stepAbove + 1) * stepAbove);
    for (const int mark : metronomeScale)
        if (mark * std::int64_t{1000} > at) return Tempo::bpm(mark);
    return from;
}

Tempo notchBelow(Tempo from) noexcept {
    const std::int64_t at = from.thousandths();
    if (at <= lowest) return Tempo::clampedThousandths((at - 1) / stepBelow * stepBelow);
    if (at > highest) return Tempo::clampedThousandths(highest + (at - highest - 1) / stepAbove * stepAbove);
    for (auto mark = metronomeScale.rbegin(); mark != metronomeScale.rend(); ++mark)
        if (*mark * std::int64_t{1000} < at) return Tempo::bpm(*mark);
    return from;
}

} // namespace piolo
