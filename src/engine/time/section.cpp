// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/section.h"

#include <algorithm>

namespace piolo::engine {

Waits::Stand Section::standAt(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    if (!breathes) return {sinceBar(tick), false};
    return measure.waits.after(sinceBar(tick));
}

BarPlace Section::placeOf(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    const auto [place, waits] = standAt(tick, measure);
    const auto inBeat = waits ? sinceBar(tick) % measure.perBeat : place % measure.perBeat;
    return {static_cast<std::int32_t>(place / measure.bar) + firstBar,
            static_cast<std::int32_t>(place % measure.bar / measure.perBeat), measure.parts.partAt(inBeat), 0,
            waits};
}

std::uint64_t Section::nextPulse(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    // Waits are whole beats, so they do not affect the pulses inside a beat.
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

namespace {

/// The elapsed thousandths of the beat at `sample`, which is in `tick`.
std::int32_t thousandthAt(std::uint64_t sample, std::uint64_t tick, std::uint64_t inBeat,
                          const PulseGrid& grid, const DrillMeasure& measure) noexcept {
    const auto begins = grid.sampleOf(tick);
    const auto length = std::max<std::uint64_t>(grid.sampleOf(tick + 1) - begins, 1);
    const auto gone = std::min(sample - std::min(begins, sample), length - 1);
    return static_cast<std::int32_t>((inBeat * 1000 + gone * 1000 / length) / measure.perBeat);
}

} // namespace

BarPlace placeAt(std::uint64_t sample, const Section& section, const PulseGrid& grid,
                 const DrillMeasure& measure) noexcept {
    // Finds the last tick at or before the sample: doubling, then halving.
    std::uint64_t width = 1;
    while (grid.sampleOf(section.start + width) <= sample) width *= 2;
    std::uint64_t tick = section.start;
    for (; width > 0; width /= 2)
        if (grid.sampleOf(tick + width) <= sample) tick += width;
    const bool past = section.end != Section::never && tick >= section.end;
    if (past) tick = section.end - 1;
    auto place = section.placeOf(tick, measure);
    const auto inBeat = (tick - section.start + section.offset) % measure.perBeat;
    place.thousandth = thousandthAt(sample, tick, inBeat, grid, measure);
    return place;
}

} // namespace piolo::engine
