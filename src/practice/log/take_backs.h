// SPDX-License-Identifier: GPL-3.0-or-later
// Takes facts back, and puts them back in the reverse order.
#pragma once

#include "practice/log/practice_book.h"
#include "practice/log/taken_back.h"

#include <vector>

namespace piolo::practice {

/// Window thread. Does nothing if the folder is read-only.
class TakeBacks {
public:
    /// `book` must outlive this object.
    explicit TakeBacks(PracticeBook& book) : book_(book) {}

    /// Records that the fact is retracted. `subject` is its passage or, for a run-through, its piece.
    void take(Id subject, Id fact);
    /// A tempo set by hand was discarded before it was recorded.
    void discard(Tempo byHand);
    /// Records that what was taken back last counts again, and returns it; nothing if nothing is left.
    std::optional<TakenBack> putBack();
    /// What putBack() would put back; null if nothing is left.
    [[nodiscard]] const TakenBack* last() const { return taken_.empty() ? nullptr : &taken_.back(); }
    void forget() { taken_.clear(); }

private:
    PracticeBook& book_;
    std::vector<TakenBack> taken_;
};

} // namespace piolo::practice
