// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_set.h"

namespace piolo::test {

PassageSet randomSet(RandomFacts& random) {
    PassageSet set;
    for (auto count = random.number(0, 4); count > 0; --count) {
        const auto fact = std::get<PieceFact>(random.body(6));
        set.pieces.push_back({fact.piece, fact.name.value_or(""), fact.instrument.value_or(""),
                              fact.due.value_or(std::optional<Date>{}), fact.composer.value_or(""),
                              fact.transposition.value_or(0), fact.bars.value_or(0),
                              fact.music.value_or(PieceMusic{}), fact.notes.value_or("")});
    }
    for (auto count = random.number(0, 6); count > 0; --count) {
        const auto fact = std::get<PassageFact>(random.body(5));
        Passage passage{fact.passage,
                        fact.title.value_or(Title{}),
                        fact.music.value_or(Music{}),
                        fact.tempi.value_or(Tempi{}),
                        fact.click.value_or(ClickPattern{}),
                        fact.manner.value_or(Manner{}),
                        fact.notes.value_or(std::vector<Note>{}),
                        fact.scale};
        const auto piece = static_cast<std::size_t>(random.number(0, 4));
        passage.title.piece = piece < set.pieces.size() ? set.pieces[piece].id : Id{};
        set.passages.push_back(passage);
    }
    return set;
}

} // namespace piolo::test
