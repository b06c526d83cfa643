// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/stage_step.h"

#include <algorithm>

namespace piolo {

namespace {

/// The number of newest runs of that kind that are clean at the target on one day, back to the first that is
/// not.
std::int32_t cleanInARow(const PassageRecord& record, Entry::Kind kind) {
    std::int32_t count = 0;
    std::optional<Date> day;
    for (auto entry = record.entries.rbegin(); entry != record.entries.rend(); ++entry) {
        if (entry->kind != kind || entry->mark == Mark::voided) continue;
        if (!day) day = entry->at.date();
        const bool counts = entry->mark == Mark::clean && entry->tempo >= record.passage.tempi.rule.target;
        if (!counts || entry->at.date() != *day) break;
        ++count;
    }
    return count;
}

std::int32_t throughInARow(const Music& music, std::span<const RunThrough> runThroughs) {
    const std::int32_t last = music.bars == 0 ? Piece::mostBars : music.firstBar + music.bars - 1;
    std::int32_t count = 0;
    for (auto through = runThroughs.rbegin(); through != runThroughs.rend(); ++through) {
        if (!playedThrough(through->played, music.firstBar, last)) break;
        ++count;
    }
    return count;
}

} // namespace

StageStep nextStep(const PassageRecord& record, std::span<const RunThrough> runThroughs,
                   const PracticeSettings& settings) {
    switch (record.stage) {
    case Stage::slow:
        return {Stage::secure, static_cast<std::int32_t>(std::min<std::size_t>(record.secures.size(), 1)), 1};
    case Stage::secure:
        return {Stage::withoutClick, record.secureDays(), settings.secureDays};
    case Stage::withoutClick:
        return {Stage::inContext, cleanInARow(record, Entry::Kind::silent), cleanRunsForAStage};
    case Stage::inContext:
        return {Stage::runThroughs, cleanInARow(record, Entry::Kind::context), cleanRunsForAStage};
    case Stage::runThroughs:
        break;
    }
    return {Stage::runThroughs, throughInARow(record.passage.music, runThroughs), runThroughsForAStage};
}

} // namespace piolo
