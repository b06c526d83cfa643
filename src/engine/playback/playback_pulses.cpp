// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/playback_pulses.h"

namespace piolo::engine {

namespace {

/// The count-in and the run, one after the other on one grid.
std::array<Section, 2> sectionsOf(const DrillPlan& plan, const DrillMeasure& measure) noexcept {
    Section countIn;
    countIn.phase = Phase::countIn;
    countIn.end = measure.countIn;
    Section run;
    run.phase = Phase::run;
    run.start = measure.countIn;
    run.offset = measure.lead;
    run.firstBar = measure.pickup > 0 ? -1 : 0;
    run.breathes = plan.standing.tempo < plan.breaths.below && !measure.waits.none();
    run.end = run.start + measure.pickup + measure.bars + (run.breathes ? measure.waits.total() : 0);
    if (plan.landing) run.landing = run.end;
    if (plan.landing) run.end += measure.perBeat;
    return {countIn, run};
}

} // namespace

PlaybackPulses::PlaybackPulses(const DrillPlan& plan, bool click) noexcept
    : measure_(DrillMeasure::of(plan)), choice_(plan.click), landing_(plan.click.landing()),
      groupStarts_(plan.groupStarts), click_(click), sections_(sectionsOf(plan, measure_)),
      section_(measure_.countIn > 0 ? 0 : 1) {
    const auto& run = sections_[1];
    last_ = run.landing == Section::never ? run.end - 1 : run.landing;
    find(0);
}

Click PlaybackPulses::click() const noexcept {
    if (counting()) return {Layer::countIn, true};
    const auto at = place();
    auto click = tick_ == present().landing ? Click{landing_, true}
                                            : choice_.at(1, at.bar, at.beat, at.part, groupStarts_);
    click.sounds = click.sounds && !at.waits && click_;
    return click;
}

bool PlaybackPulses::isSent() const noexcept {
    const auto at = place();
    return !at.waits || at.part == 0;
}

/// Finds the first pulse at or after `from`: beats in the count-in, every pulse in the run.
void PlaybackPulses::find(std::uint64_t from) noexcept {
    if (counting()) {
        tick_ = present().nextBeat(from, measure_);
        if (tick_ < present().end) return;
        section_ = 1;
        from = present().start;
    }
    tick_ = present().nextPulse(from, measure_);
}

} // namespace piolo::engine
