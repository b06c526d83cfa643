// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_grid.h"

#include <algorithm>

namespace piolo {

namespace {

/// Runs that were broken off do not count.
const Entry* lastRun(const PassageRecord& record) {
    const auto isRun = [](const Entry& entry) {
        return entry.kind != Entry::Kind::tempo && entry.mark != Mark::voided;
    };
    const auto found = std::find_if(record.entries.rbegin(), record.entries.rend(), isRun);
    return found == record.entries.rend() ? nullptr : &*found;
}

bool wasPlayedAfter(const PassageRecord& record, const PassageRecord& other) {
    const Entry* const run = lastRun(record);
    const Entry* const before = lastRun(other);
    return run != nullptr && (before == nullptr || run->at.utcMillis > before->at.utcMillis);
}

} // namespace

ScaleGrid gridOf(const Notebook& notebook, const ScaleView& view, std::string_view instrument) {
    ScaleGrid grid;
    for (const Id id : notebook.passages()) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr || !record->passage.scale) continue;
        const Scale& scale = *record->passage.scale;
        if (ScaleView{scale.kind, scale.range, scale.pattern} != view || scale.instrument != instrument)
            continue;
        ScaleCell& cell = grid.at(scale.notesPerBeat, pitchClass(scale.tonic));
        cell.best = std::max(cell.best, record->best);
        if (const Entry* const run = lastRun(*record))
            cell.lastDay = std::max(cell.lastDay, std::optional(run->at.date()));
        cell.secure = cell.secure || record->secureDays() >= notebook.settings().secureDays;
        const PassageRecord* const shown = notebook.passage(cell.passage);
        if (shown != nullptr && !wasPlayedAfter(*record, *shown)) continue;
        cell.passage = id;
        cell.tempo = record->standing.tempo;
        cell.streak = record->standing.streak;
        cell.cleanRuns = record->passage.tempi.rule.cleanRuns;
    }
    return grid;
}

} // namespace piolo
