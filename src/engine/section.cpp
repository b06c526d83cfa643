// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/section.h"

namespace piolo::engine {

BarPlace Section::placeOf(std::uint64_t tick, const DrillMeasure& measure) const noexcept {
    const auto place = inBars(tick);
    return {static_cast<std::int32_t>(place / measure.bar) + firstBar,
            static_cast<std::int32_t>(place % measure.bar / measure.perBeat),
            static_cast<std::int32_t>(place % measure.perBeat / measure.step)};
}

std::uint64_t Section::next(std::uint64_t tick, std::uint64_t unit) const noexcept {
    const auto beyond = inBars(tick) % unit;
    return beyond == 0 ? tick : tick + unit - beyond;
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
