// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces and passages without their runs, for example from a teacher to a student.
#pragma once

#include "core/base/result.h"
#include "core/history/notebook.h"

#include <span>
#include <vector>

namespace piolo {

/// Every id occurs once; the pieces of all passages are included.
struct PassageSet {
    std::vector<Piece> pieces;
    std::vector<Passage> passages;
    bool operator==(const PassageSet&) const = default;
};

/// All pieces and passages that are not removed, and removed pieces to which such a passage belongs. Pieces
/// in order of name, passages in order of creation. Fault unknownPassage, with an empty location: a passage
/// belongs to a piece that no fact describes.
Result<PassageSet> wholeSet(const Notebook& notebook);
/// These passages of the notebook (even removed ones) and their pieces, in the same order. Fault as
/// wholeSet().
Result<PassageSet> chosenSet(const Notebook& notebook, std::span<const Id> passages);

} // namespace piolo
