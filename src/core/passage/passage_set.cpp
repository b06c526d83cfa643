// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/passage_set.h"

#include <algorithm>
#include <unordered_set>

namespace piolo {

namespace {

/// Keeps the pieces of `passages`, whatever `keeps` returns.
template <typename Keeps>
Result<PassageSet> setOf(const Notebook& notebook, const std::vector<Id>& passages, Keeps keeps) {
    PassageSet set;
    std::unordered_set<Id> named;
    for (const Id id : passages) {
        set.passages.push_back(notebook.passage(id)->passage);
        const Id piece = set.passages.back().title.piece;
        if (!piece.isNone()) named.insert(piece);
    }
    for (const Piece& piece : notebook.pieces(true))
        if (named.erase(piece.id) > 0 || keeps(piece.id)) set.pieces.push_back(piece);
    if (!named.empty()) return Fault{FaultNumber::unknownPassage, {}, {named.begin()->text()}};
    return set;
}

} // namespace

Result<PassageSet> wholeSet(const Notebook& notebook) {
    std::unordered_set<Id> kept;
    for (const Piece& piece : notebook.pieces()) kept.insert(piece.id);
    return setOf(notebook, notebook.passages(), [&](Id piece) { return kept.contains(piece); });
}

Result<PassageSet> chosenSet(const Notebook& notebook, std::span<const Id> passages) {
    std::vector<Id> ordered = notebook.passages(true);
    std::erase_if(ordered,
                  [&](Id id) { return std::find(passages.begin(), passages.end(), id) == passages.end(); });
    return setOf(notebook, ordered, [](Id) { return false; });
}

} // namespace piolo
