// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/bar_parts.h"

#include "core/music/note_stretch.h"

#include <algorithm>
#include <utility>

namespace piolo::practice {

Passage passageOfBars(const Passage& whole, const BuildUpPart& part, std::string name) {
    Passage made = whole;
    made.id = {};
    made.title.origin = whole.id;
    made.title.name = std::move(name);
    made.music = musicOf(part, whole.music);
    made.notes = notesOf(part, whole.music, whole.notes);
    made.scale.reset(); // some bars of a scale are not a scale: they are not in the grid
    return made;
}

std::vector<BuildUpPart> partsFromTheEnd(const Music& whole) {
    if (whole.bars < 2 || whole.bars > mostBarsToBuildUp) return {};
    std::vector<BuildUpPart> parts = lastBarFirst(whole);
    parts.pop_back();
    return parts;
}

std::vector<BuildUpPart> partsThatOverlap(const Music& whole) {
    constexpr std::int32_t mostBars = 4 * mostBarsToBuildUp;
    if (whole.bars < 2 || whole.bars > mostBars) return {};
    const std::int32_t usual = whole.bars > mostBarsToBuildUp ? 4 : 2;
    return overlappingParts(whole, std::min(usual, whole.bars - 1));
}

} // namespace piolo::practice
