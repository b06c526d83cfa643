// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/paper_runs.h"

#include <algorithm>

namespace piolo {

namespace {

void addRuns(std::vector<RunFact>& runs, RunFact run, Mark mark, int count) {
    run.mark = mark;
    runs.insert(runs.end(), static_cast<std::size_t>(std::max(count, 0)), run);
}

} // namespace

std::vector<RunFact> enteredRuns(Id passage, std::span<const PaperRung> rungs) {
    std::vector<RunFact> runs;
    for (const PaperRung& rung : rungs) {
        RunFact run;
        run.passage = passage;
        run.tempo = rung.tempo;
        run.entered = true;
        addRuns(runs, run, Mark::missed, rung.missed);
        addRuns(runs, run, Mark::clean, rung.clean);
    }
    return runs;
}

PaperOutcome outcomeOf(const PassageRecord& record, Date day, std::span<const RunFact> runs) {
    PaperOutcome outcome{record.standing, record.best};
    if (!runs.empty() && record.lastDay != day) outcome.standing = handSet(record.standing.tempo);
    for (const RunFact& run : runs) {
        const Outcome one = afterRun(outcome.standing, run.tempo, run.mark, record.passage.tempi.rule);
        outcome.standing = one.after;
        if (one.fullStreak) outcome.best = std::max(outcome.best.value_or(run.tempo), run.tempo);
        if (one.secure) ++outcome.secures;
    }
    return outcome;
}

} // namespace piolo
