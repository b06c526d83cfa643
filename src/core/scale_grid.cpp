// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scale_grid.h"

#include <algorithm>

namespace piolo {

namespace {

/// When a run of it was played last, in milliseconds of UTC; -1 for never.
std::int64_t lastPlayed(const PassageRecord& record) {
    return record.entries.empty() ? -1 : record.entries.back().at.utcMillis;
}

std::optional<Date> lastRunDay(const PassageRecord& record) {
    const auto isRun = [](const Entry& entry) { return entry.kind != Entry::Kind::tempo; };
    const auto found = std::find_if(record.entries.rbegin(), record.entries.rend(), isRun);
    if (found == record.entries.rend()) return std::nullopt;
    return found->at.date();
}

} // namespace

ScaleGrid gridOf(const Notebook& notebook, const ScaleView& view, std::string_view instrument) {
    ScaleGrid grid;
    std::array<std::int64_t, std::size_t{Scale::mostNotesPerBeat} * keyCount> newest;
    newest.fill(-2);
    for (const Id id : notebook.passages()) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr || !record->passage.scale) continue;
        const Scale& scale = *record->passage.scale;
        if (ScaleView{scale.kind, scale.range, scale.pattern} != view || scale.instrument != instrument)
            continue;
        const int key = pitchClass(scale.tonic);
        ScaleCell& cell = grid.at(scale.notesPerBeat, key);
        cell.best = std::max(cell.best, record->best);
        cell.lastDay = std::max(cell.lastDay, lastRunDay(*record));
        cell.secure = cell.secure || record->secureDays() >= notebook.settings().secureDays;
        auto& latest = newest.at(static_cast<std::size_t>((scale.notesPerBeat - 1) * keyCount + key));
        if (lastPlayed(*record) <= latest) continue;
        latest = lastPlayed(*record);
        cell.passage = id;
        cell.tempo = record->standing.tempo;
        cell.streak = record->standing.streak;
        cell.cleanRuns = record->passage.tempi.rule.cleanRuns;
    }
    return grid;
}

} // namespace piolo
