// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picked_passage.h"

#include "journal/ports.h"

#include <algorithm>

namespace piolo::app {
namespace {

constexpr std::int32_t wholeBeat = 1000;

Tempi tempiFor(std::optional<Tempo> marked) {
    Tempi tempi;
    if (!marked) return tempi;
    tempi.rule.target = *marked;
    tempi.start =
        std::min(*marked, Tempo::clampedThousandths(marked->thousandths() / 2 / wholeBeat * wholeBeat));
    tempi.rule.floor = std::min(tempi.rule.floor, tempi.start);
    return tempi;
}

} // namespace

PassageSet pickedPassage(const score::Score& score, const score::Part& part, score::Stretch stretch,
                         const score::Excerpt& made) {
    const auto randomness = journal::systemRandomness();
    const std::string title = score.title.empty() ? "Untitled" : score.title;
    const Piece piece{randomness->id(), title, part.name, {}};
    const std::string bars =
        "bars " + part.bars[stretch.first].number + " to " + part.bars[stretch.last].number;
    const Passage passage{
        randomness->id(), {title + ", " + bars, piece.id}, made.music, tempiFor(made.tempo), {}};
    return {{piece}, {passage}};
}

} // namespace piolo::app
