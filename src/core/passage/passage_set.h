// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces and passages without what was played: what a teacher gives to a student.
#pragma once

#include "core/base/result.h"
#include "core/history/notebook.h"

#include <span>
#include <vector>

namespace piolo {

/// Every id stands once; the piece that a passage belongs to is among the pieces.
struct PassageSet {
    std::vector<Piece> pieces;
    std::vector<Passage> passages;
    bool operator==(const PassageSet&) const = default;
};

/// All pieces and passages that are not removed; a removed piece is there when a passage belongs to it.
/// Pieces in the order of their names, passages as they were made. Fault unknownPassage, with an empty place:
/// a passage belongs to a piece that no fact describes.
Result<PassageSet> wholeSet(const Notebook& notebook);
/// These passages (of the notebook, removed ones too) and their pieces, in the same order. Fault as
/// wholeSet().
Result<PassageSet> chosenSet(const Notebook& notebook, std::span<const Id> passages);

} // namespace piolo
