// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/build_up.h"

#include <algorithm>

namespace piolo {

std::vector<BuildUpPart> lastBarFirst(const Music& music) {
    std::vector<BuildUpPart> parts;
    for (std::int32_t bars = 1; bars <= music.bars; ++bars)
        parts.push_back({music.firstBar + music.bars - bars, bars});
    return parts;
}

std::vector<BuildUpPart> overlappingParts(const Music& music, std::int32_t barsEach) {
    std::vector<BuildUpPart> parts;
    const std::int32_t most = std::max(barsEach, 1);
    for (std::int32_t begun = 0; begun < music.bars;) {
        const std::int32_t bars = std::min(most, music.bars - begun);
        parts.push_back({music.firstBar + begun, bars});
        begun += bars;
    }
    return parts;
}

Music musicOf(const BuildUpPart& part, const Music& whole) {
    Music music = whole;
    music.firstBar = part.firstBar;
    music.bars = part.bars;
    if (part.firstBar != whole.firstBar) music.pickup = {};
    if (part.firstBar + part.bars < whole.firstBar + whole.bars) music.landing = true;
    return music;
}

Music inContext(const Music& music, std::int32_t pieceBars) {
    if (music.bars == 0) return music;
    Music wider = music;
    wider.firstBar = std::max(std::min(music.firstBar, 1), music.firstBar - contextBars);
    const std::int32_t last = music.firstBar + music.bars - 1;
    const std::int32_t end = pieceBars >= last ? std::min(last + contextBars, pieceBars) : last + contextBars;
    wider.bars = std::min(end - wider.firstBar + 1, Music::mostBars);
    if (wider.firstBar < music.firstBar) wider.pickup = {};
    return wider;
}

} // namespace piolo
