// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/unheard_runs.h"

#include <algorithm>

namespace piolo::practice {

std::vector<DoubtFact> UnheardRuns::doubts() const {
    std::vector<DoubtFact> doubts;
    for (const Run& run : runs_) {
        auto of = std::ranges::find(doubts, run.passage, &DoubtFact::passage);
        if (of == doubts.end()) of = doubts.insert(doubts.end(), DoubtFact{run.passage, {}});
        of->runs.push_back(run.fact);
    }
    return doubts;
}

} // namespace piolo::practice
