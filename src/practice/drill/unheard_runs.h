// SPDX-License-Identifier: GPL-3.0-or-later
// The runs that ended clean since the player last pressed a key.
#pragma once

#include "core/facts/doubt_fact.h"

#include <cstddef>
#include <vector>

namespace piolo::practice {

/// Window thread. In a set, they may be runs of several passages.
class UnheardRuns {
public:
    void clear() { runs_.clear(); }
    void add(Id passage, Id run) { runs_.push_back({passage, run}); }
    [[nodiscard]] std::size_t count() const { return runs_.size(); }
    /// One for each passage, in the order in which they were played.
    [[nodiscard]] std::vector<DoubtFact> doubts() const;

private:
    struct Run {
        Id passage;
        Id fact;
    };
    std::vector<Run> runs_;
};

} // namespace piolo::practice
