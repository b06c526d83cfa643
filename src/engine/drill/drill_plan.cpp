// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/drill_plan.h"

namespace piolo::engine {

DrillPlan planOf(const Passage& passage, Standing standing, const PracticeSettings& settings) {
    const auto& music = passage.music;
    DrillPlan plan;
    plan.beatsPerBar = music.meter.beatsPerBar();
    plan.groupStarts = music.meter.groupStarts();
    plan.subdivision = pulsesToTheBeat(passage.click, music.meter.beat(), music.subdivision);
    plan.swing = swingOf(passage.click, music.meter.beat(), plan.subdivision);
    plan.click = ClickChoice::of(passage.click, music.meter.beat());
    plan.breaths = Breaths::of(passage.click, music.firstBar);
    plan.pickupBeats = ratio(music.pickup, fractionOf(music.meter.beat()));
    plan.bars = music.bars;
    plan.landing = music.landing;
    plan.countInBars = music.countInBars;
    plan.breathBeats = music.breathBeats;
    plan.start = passage.tempi.start;
    plan.rule = passage.tempi.rule;
    plan.standing = standing;
    plan.gapMillisAfterMiss = settings.gapMillisAfterMiss;
    plan.playOn = settings.playOn;
    plan.pauseAfterRuns = settings.pauseAfterRuns;
    return plan;
}

} // namespace piolo::engine
