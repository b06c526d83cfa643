// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/scores/picked_passage.h"

#include "journal/folder/ports.h"

namespace piolo::practice {

PassageSet pickedPassage(const score::Score& score, const score::Part& part, score::Stretch stretch,
                         const score::Excerpt& made) {
    const auto randomness = journal::systemRandomness();
    const std::string title = score.title.empty() ? "Untitled" : score.title;
    const Piece piece{randomness->id(), title, part.name, {}};
    const std::string bars =
        "bars " + part.bars[stretch.first].number + " to " + part.bars[stretch.last].number;
    Passage passage{randomness->id(), {title + ", " + bars, piece.id}, made.music, score::tempiOf(made), {}};
    passage.notes = score::notesKept(made);
    return {{piece}, {passage}};
}

} // namespace piolo::practice
