// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/run_outlook.h"

#include "core/rule/settle.h"
#include "core/time/duration.h"

#include <algorithm>
#include <cmath>

namespace piolo::practice {

int RunOutlook::fewerCleanRuns() const {
    return runMillis && reasonableCleanRuns < cleanRuns ? reasonableCleanRuns : 0;
}

Standing standingWith(const Tempi& tempi, const PassageRecord* record) {
    return record != nullptr ? edited(record->standing, tempi.rule) : Standing{tempi.start, 0};
}

RunOutlook outlookOf(const Passage& passage, const Standing& standing) {
    const Rule& rule = passage.tempi.rule;
    RunOutlook outlook;
    outlook.cleanShare = settlesAt(rule);
    outlook.runsToMove =
        static_cast<int>(std::min(999'999L, std::lround(expectedRunsToClimb(0.9, rule.cleanRuns))));
    outlook.climbs = standing.tempo < rule.target;
    outlook.cleanRuns = rule.cleanRuns;
    if (passage.music.bars == 0) return outlook;
    outlook.runMillis = piolo::runMillis(passage.music, standing.tempo);
    outlook.targetMillis = millisToTarget(passage.music, rule, standing);
    outlook.reasonableCleanRuns = proposedCleanRuns(*outlook.runMillis);
    return outlook;
}

} // namespace piolo::practice
