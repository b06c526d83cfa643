// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/timeline.h"

#include <algorithm>

namespace piolo::engine {

void Timeline::begin(Origin origin, Tempo tempo, SampleRate rate, const DrillMeasure& measure) noexcept {
    measure_ = measure;
    grid_ = {origin, tempo, rate, static_cast<std::int64_t>(measure.perBeat)};
}

std::uint64_t Timeline::turn(std::uint64_t tick, Tempo tempo) noexcept {
    if (tempo == grid_.tempo) return tick;
    grid_.origin = grid_.originAt(tick);
    grid_.tempo = tempo;
    return 0;
}

void Timeline::enter(const Section& section) noexcept {
    section_ = section;
    begun_ = false;
    startSample_ = sampleOf(section.start);
    endSample_ = sampleOf(section.end);
    find(section.nextPulse(section.start, measure_));
}

void Timeline::extend(std::uint64_t ticks) noexcept {
    section_.end += ticks;
    endSample_ = sampleOf(section_.end);
}

void Timeline::shorten(std::uint64_t ticks) noexcept {
    section_.end -= ticks;
    endSample_ = sampleOf(section_.end);
}

void Timeline::passPulse() noexcept { find(section_.nextPulse(pulse_ + 1, measure_)); }

void Timeline::find(std::uint64_t pulse) noexcept {
    pulse_ = pulse;
    pulseSample_ = sampleOf(pulse);
}

std::uint64_t Timeline::sampleOf(std::uint64_t tick) const noexcept {
    return tick == Section::never ? Section::never : grid_.sampleOf(tick);
}

std::uint64_t Timeline::nextBar() const noexcept {
    return std::min(section_.nextBar(pulse_, measure_), section_.end);
}

std::uint64_t Timeline::nextSample() const noexcept {
    if (!begun_) return startSample_;
    return pulseIsInside() ? std::min(pulseSample_, endSample_) : endSample_;
}

} // namespace piolo::engine
