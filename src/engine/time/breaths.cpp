// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/time/breaths.h"

#include <algorithm>
#include <tuple>

namespace piolo::engine {

Breaths Breaths::of(const ClickPattern& pattern, std::int32_t firstBar) noexcept {
    Breaths breaths;
    breaths.below = pattern.breathBelow;
    for (const auto& [bar, beat, beats] : pattern.breaths)
        if (breaths.count < breaths.places.size())
            breaths.places[breaths.count++] = {bar - firstBar, beat - 1, beats};
    return breaths.inRange();
}

Breaths Breaths::inRange() const noexcept {
    Breaths kept;
    kept.below = below;
    for (std::size_t i = 0; i < std::min(count, places.size()); ++i) {
        auto place = places[i];
        place.beats = std::clamp(place.beats, 1, ClickPattern::mostWait);
        const auto* last = kept.count == 0 ? nullptr : &kept.places[kept.count - 1];
        const bool follows =
            last == nullptr || std::tie(last->bar, last->beat) < std::tie(place.bar, place.beat);
        if (follows && place.bar >= -1 && place.beat >= 0) kept.places[kept.count++] = place;
    }
    return kept;
}

std::int64_t Breaths::beatsIn(std::int64_t bars, std::int32_t beatsPerBar, Tempo tempo) const noexcept {
    std::int64_t beats = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const auto& place = places[i];
        const bool isFirst = place.bar == 0 && place.beat == 0;
        if (place.bar >= 0 && place.bar < bars && place.beat < beatsPerBar && !isFirst) beats += place.beats;
    }
    return tempo < below ? beats : 0;
}

} // namespace piolo::engine
