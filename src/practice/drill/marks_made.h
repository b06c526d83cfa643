// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of a sitting in the order in which they were made, so that the newest mark is taken back first.
#pragma once

#include "core/history/notebook.h"

#include <string_view>
#include <vector>

namespace piolo::practice {

/// Window thread. In a set, they may belong to several passages.
class MarksMade {
public:
    void clear() { facts_.clear(); }
    void add(const Fact& fact) { facts_.push_back({passageOf(fact.body), fact.id}); }
    /// The passage of the newest one that can still be taken back on `device`; none if there is none.
    [[nodiscard]] Id passageOfNewest(const Notebook& notebook, std::string_view device) const;

private:
    struct Made {
        Id passage;
        Id fact;
    };
    std::vector<Made> facts_;
};

} // namespace piolo::practice
