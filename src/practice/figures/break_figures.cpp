// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/break_figures.h"

#include <algorithm>
#include <functional>
#include <numeric>

namespace piolo::practice {

namespace {

constexpr std::int32_t mostBarsByBeat = 8;

/// The numbers of the bars to show, in order.
std::vector<std::int32_t> barNumbers(const Music& music, const Misses& misses) {
    std::int32_t first = music.firstBar;
    std::int32_t end = music.firstBar + music.bars;
    std::vector<std::int32_t> missed;
    for (const MissedBeat& beat : misses.beats) {
        first = std::min(first, beat.bar);
        end = std::max(end, beat.bar + 1);
        if (missed.empty() || missed.back() != beat.bar) missed.push_back(beat.bar);
    }
    if (end - first > static_cast<std::int32_t>(BreakFigures::mostBars)) return missed;
    std::vector<std::int32_t> all(static_cast<std::size_t>(end - first));
    std::iota(all.begin(), all.end(), first);
    return all;
}

/// Leaves the worst ones, in their order.
void keepWorst(std::vector<BreakBar>& bars) {
    if (bars.size() <= BreakFigures::mostBars) return;
    std::vector<int> totals;
    for (const BreakBar& bar : bars) totals.push_back(bar.total());
    const auto last = totals.begin() + BreakFigures::mostBars - 1;
    std::nth_element(totals.begin(), last, totals.end(), std::greater<>());
    const int least = *last;
    auto ties =
        static_cast<std::ptrdiff_t>(BreakFigures::mostBars) -
        std::count_if(bars.begin(), bars.end(), [least](const BreakBar& bar) { return bar.total() > least; });
    std::erase_if(bars, [&](const BreakBar& bar) {
        return bar.total() < least || (bar.total() == least && ties-- <= 0);
    });
}

void count(const Misses& misses, BreakFigures& figures) {
    auto bar = figures.bars.begin();
    for (const MissedBeat& beat : misses.beats) {
        while (bar->number != beat.bar) ++bar;
        const std::size_t column = figures.byBeat ? static_cast<std::size_t>(beat.beat) - 1 : 0;
        bar->columns.at(column) += beat.count;
    }
}

} // namespace

int BreakBar::total() const { return std::accumulate(columns.begin(), columns.end(), 0); }

double BreakFigures::share(int count) const { return most == 0 ? 0.0 : static_cast<double>(count) / most; }

BreakFigures breaksOf(const Music& music, const Misses& misses) {
    BreakFigures figures;
    figures.byBeat = music.bars > 0 && music.bars <= mostBarsByBeat;
    const std::size_t columns = figures.byBeat ? static_cast<std::size_t>(music.meter.beatsPerBar()) : 1;
    const std::vector<std::int32_t> numbers = barNumbers(music, misses);
    for (const std::int32_t number : numbers) figures.bars.push_back({number, std::vector<int>(columns)});
    count(misses, figures);
    figures.onlyMissed =
        !numbers.empty() && numbers.back() - numbers.front() >= static_cast<int>(numbers.size());
    keepWorst(figures.bars);
    figures.leftOut = numbers.size() - figures.bars.size();
    for (const BreakBar& bar : figures.bars)
        for (const int each : bar.columns) figures.most = std::max(figures.most, each);
    return figures;
}

} // namespace piolo::practice
