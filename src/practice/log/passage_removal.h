// SPDX-License-Identifier: GPL-3.0-or-later
// Removing passages, and undoing it.
#pragma once

#include "practice/log/practice_book.h"

namespace piolo::practice {

/// Window thread. Remembers the last removal until it is undone.
class PassageRemoval {
public:
    /// `book` must outlive this object.
    explicit PassageRemoval(PracticeBook& book) : book_(book) {}

    /// The passage removed last, unless it was restored; otherwise none.
    [[nodiscard]] Id last() const { return last_; }
    // False if nothing was recorded: the passage is unknown, it is so already, or the folder is read-only.
    bool remove(Id passage) { return set(passage, true); }
    bool restore(Id passage) { return set(passage, false); }

private:
    bool set(Id passage, bool removed);

    PracticeBook& book_;
    Id last_;
};

} // namespace piolo::practice
