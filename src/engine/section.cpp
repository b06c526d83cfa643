// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/section.h"

namespace piolo::engine {

Waits::Stand Section::standAt(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    if (!breathes) return {sinceBar(tick), false};
    return measure.waits.after(sinceBar(tick));
}

BarPlace Section::placeOf(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    const auto [place, waits] = standAt(tick, measure);
    const auto inBeat = waits ? sinceBar(tick) % measure.perBeat : place % measure.perBeat;
    return {static_cast<std::int32_t>(place / measure.bar) + firstBar,
            static_cast<std::int32_t>(place % measure.bar / measure.perBeat), measure.parts.partAt(inBeat),
            waits};
}

std::uint64_t Section::nextPulse(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    // Waits are whole beats: the pulses inside a beat do not know of them.
    const auto inBeat = sinceBar(tick) % measure.perBeat;
    return tick - inBeat + measure.parts.next(inBeat);
}

std::uint64_t Section::nextBeat(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    const auto inBeat = sinceBar(tick) % measure.perBeat;
    return inBeat == 0 ? tick : tick + measure.perBeat - inBeat;
}

std::uint64_t Section::nextBar(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    const auto place = standAt(tick, measure).place;
    const auto bar = (place + measure.bar - 1) / measure.bar * measure.bar;
    const auto waited = breathes ? measure.waits.before(bar) : 0;
    return start + bar + waited - offset;
}

BarPlace placeAt(std::uint64_t sample, const Section& section, const PulseGrid& grid,
                 const DrillMeasure& measure) noexcept {
    // The last tick that is not after the sample: doubling, then halving.
    std::uint64_t width = 1;
    while (grid.sampleOf(section.start + width) <= sample) width *= 2;
    std::uint64_t tick = section.start;
    for (; width > 0; width /= 2)
        if (grid.sampleOf(tick + width) <= sample) tick += width;
    const bool past = section.end != Section::never && tick >= section.end;
    return section.placeOf(past ? section.end - 1 : tick, measure);
}

} // namespace piolo::engine
