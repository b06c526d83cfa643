// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/run_history.h"

#include <algorithm>

namespace piolo::engine {

void RunHistory::add(const RunRecord& run) noexcept {
    if (count_ == capacity) {
        std::copy(runs_.begin() + 1, runs_.end(), runs_.begin());
        --count_;
    }
    runs_[count_++] = run;
}

const RunRecord* RunHistory::newest() const noexcept { return count_ == 0 ? nullptr : &runs_[count_ - 1]; }

RunRecord* RunHistory::ownerOf(std::uint64_t sample) noexcept {
    for (std::size_t i = count_; i > 0; --i)
        if (runs_[i - 1].ownFrom <= sample) return &runs_[i - 1];
    return nullptr;
}

void RunHistory::turnOver() noexcept {
    for (auto& run : runs_) run.earlier = true;
}

void RunHistory::close() noexcept {
    for (auto& run : runs_) run.closed = true;
}

Tally RunHistory::missedAfterAll(RunRecord& run, const DrillPlan& plan) noexcept {
    run.mark = Mark::missed;
    Tally tally = run.before;
    for (auto* later = &run; later != runs_.data() + count_; ++later) {
        later->before = tally;
        tally.add(later->grid.tempo, later->mark, plan);
    }
    return tally;
}

} // namespace piolo::engine
