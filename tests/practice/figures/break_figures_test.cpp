// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/break_figures.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;
using namespace piolo::practice;

namespace {

/// Misses at these places, each a bar and a beat.
Misses missesAt(std::vector<MissedBeat> beats) {
    Misses misses;
    for (const MissedBeat& beat : beats) misses.placed += beat.count;
    misses.beats = std::move(beats);
    return misses;
}

Music bars(int count, int first = 41) {
    Music music;
    music.bars = count;
    music.firstBar = first;
    return music;
}

} // namespace

TEST_CASE("up to eight bars misses are counted by beat, in longer and open-ended passages by bar") {
    const Misses misses = missesAt({{41, 2, 3}, {41, 4, 1}});
    CHECK(breaksOf(bars(8), misses).bars.front().columns == std::vector<int>{0, 3, 0, 1});
    for (const int long_ : {9, 0}) {
        const BreakFigures figures = breaksOf(bars(long_), misses);
        CHECK_FALSE(figures.byBeat);
        CHECK(figures.bars.front().columns == std::vector<int>{4});
    }
}

TEST_CASE("every bar of the passage is there, and those of its context that were missed") {
    const BreakFigures figures = breaksOf(bars(2), missesAt({{39, 1, 1}, {42, 1, 1}}));
    REQUIRE(figures.bars.size() == 4);
    CHECK(figures.bars.front().number == 39);
    CHECK(figures.bars.back().number == 42);
    CHECK(figures.bars[1].total() == 0);
}

TEST_CASE("shares are of the highest column; the worst have at least half as many, and never a single miss") {
    const BreakFigures figures = breaksOf(bars(1), missesAt({{41, 1, 4}, {41, 2, 2}, {41, 3, 1}}));
    CHECK(figures.share(4) == doctest::Approx(1));
    CHECK(figures.share(1) == doctest::Approx(0.25));
    CHECK(figures.isWorst(4));
    CHECK(figures.isWorst(2));
    CHECK_FALSE(figures.isWorst(1));
    const BreakFigures single = breaksOf(bars(1), missesAt({{41, 1, 1}}));
    CHECK_FALSE(single.isWorst(1));
    CHECK(breaksOf(bars(1), {}).share(0) == doctest::Approx(0));
}

TEST_CASE(
    "bars without a miss are left out where there would be too many, and of too many the worst are shown") {
    const auto most = static_cast<std::int32_t>(BreakFigures::mostBars);
    const BreakFigures whole = breaksOf(bars(most), missesAt({{41, 1, 1}}));
    CHECK(whole.bars.size() == BreakFigures::mostBars);
    CHECK_FALSE(whole.onlyMissed);
    const BreakFigures far = breaksOf(bars(0, 1), missesAt({{1, 1, 2}, {999'999, 3, 5}}));
    REQUIRE(far.bars.size() == 2);
    CHECK(far.bars.front().number == 1);
    CHECK(far.bars.back().number == 999'999);
    CHECK(far.most == 5);
    CHECK(far.onlyMissed);
    CHECK(far.leftOut == 0);
    std::vector<MissedBeat> many;
    for (int bar = 0; bar < 1000; ++bar) many.push_back({10 * bar, 1, bar % 10 == 0 ? 3 : 1});
    const BreakFigures worst = breaksOf(bars(0, 1), missesAt(many));
    CHECK(worst.bars.size() == BreakFigures::mostBars);
    CHECK(worst.leftOut == 1000 - BreakFigures::mostBars);
    CHECK(std::ranges::all_of(worst.bars, [](const BreakBar& bar) { return bar.total() == 3; }));
    CHECK(std::ranges::is_sorted(worst.bars, {}, &BreakBar::number));
}
