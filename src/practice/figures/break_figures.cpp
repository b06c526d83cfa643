// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/break_figures.h"

#include <algorithm>
#include <numeric>

namespace piolo::practice {

namespace {

constexpr std::int32_t mostBarsByBeat = 8;

int countAt(const Misses& misses, std::int32_t bar, std::int32_t beat) {
    const auto found = std::find_if(misses.beats.begin(), misses.beats.end(), [&](const MissedBeat& missed) {
        return missed.bar == bar && missed.beat == beat;
    });
    return found == misses.beats.end() ? 0 : found->count;
}

std::vector<int> columnsOf(const Misses& misses, std::int32_t bar, const Music& music, bool byBeat) {
    if (!byBeat) return {misses.inBar(bar)};
    std::vector<int> columns;
    for (int beat = 1; beat <= music.meter.beatsPerBar(); ++beat)
        columns.push_back(countAt(misses, bar, beat));
    return columns;
}

} // namespace

int BreakBar::total() const { return std::accumulate(columns.begin(), columns.end(), 0); }

double BreakFigures::share(int count) const { return most == 0 ? 0.0 : static_cast<double>(count) / most; }

BreakFigures breaksOf(const Music& music, const Misses& misses) {
    std::int32_t first = music.firstBar;
    std::int32_t end = music.firstBar + music.bars;
    for (const MissedBeat& missed : misses.beats) {
        first = std::min(first, missed.bar);
        end = std::max(end, missed.bar + 1);
    }
    BreakFigures figures;
    figures.byBeat = music.bars > 0 && music.bars <= mostBarsByBeat;
    for (std::int32_t bar = first; bar < end; ++bar) {
        figures.bars.push_back({bar, columnsOf(misses, bar, music, figures.byBeat)});
        for (const int count : figures.bars.back().columns) figures.most = std::max(figures.most, count);
    }
    return figures;
}

} // namespace piolo::practice
