// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/worst_passages.h"

#include "core/history/misses.h"

#include <algorithm>
#include <map>

namespace piolo::practice {

namespace {

constexpr std::int32_t leastInABar = 2;

WorstPassage counted(const PassageRecord& record, Date since) {
    WorstPassage worst;
    worst.passage = record.passage.id;
    for (const Entry& entry : record.entries) {
        if (entry.kind != Entry::Kind::run || entry.mark == Mark::voided || entry.at.date() < since) continue;
        ++worst.runs;
        worst.clean += entry.mark == Mark::clean ? 1 : 0;
    }
    return worst;
}

/// a.clean / a.runs < b.clean / b.runs, without a rounding.
bool isWorse(const WorstPassage& a, const WorstPassage& b) {
    const int left = a.clean * b.runs;
    const int right = b.clean * a.runs;
    return left != right ? left < right : a.runs - a.clean > b.runs - b.clean;
}

std::optional<std::int32_t> worstBar(const Misses& misses) {
    std::map<std::int32_t, std::int32_t> bars;
    for (const MissedBeat& beat : misses.beats) bars[beat.bar] += beat.count;
    const auto worst = std::max_element(bars.begin(), bars.end(),
                                        [](const auto& a, const auto& b) { return a.second < b.second; });
    if (worst == bars.end() || worst->second < leastInABar) return std::nullopt;
    return worst->first;
}

} // namespace

std::vector<WorstPassage> worstPassages(const Notebook& notebook, Id piece, Date today, std::size_t most) {
    const Date since = Date::fromDaysSince1970(today.daysSince1970() - worstDays + 1);
    std::vector<WorstPassage> all;
    for (const Id id : notebook.passages()) {
        const PassageRecord* const record = notebook.passage(id);
        // Asked in this order, the entries of passages that have rested are never made.
        if (record == nullptr || !record->lastDay || *record->lastDay < since) continue;
        if (!piece.isNone() && record->passage.title.piece != piece) continue;
        const WorstPassage worst = counted(*record, since);
        if (worst.runs >= worstLeastRuns && worst.clean < worst.runs) all.push_back(worst);
    }
    std::stable_sort(all.begin(), all.end(), isWorse);
    if (all.size() > most) all.resize(most);
    for (WorstPassage& worst : all)
        worst.bar = worstBar(
            missesByBar(*notebook.passage(worst.passage), notebook.settings().reactionMillis, since));
    return all;
}

} // namespace piolo::practice
