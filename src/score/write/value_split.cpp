// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/value_split.h"

#include "core/time/fraction_sum.h"

namespace piolo::score {

namespace {

std::optional<NoteShape> shapeFor(std::int64_t ticks, const TickGrid& grid) {
    const auto length = reducedFraction(ticks, grid.whole);
    return length ? shapeOf(*length) : std::nullopt;
}

std::optional<ShapedTicks> longestAt(const TickRange& range, const TickGrid& grid) {
    if (range.begin % grid.beat == 0 && grid.beat <= range.length())
        if (const auto shape = shapeFor(grid.beat, grid); shape && shape->dots > 0)
            return ShapedTicks{*shape, grid.beat};
    for (auto value = noteValues.rbegin(); value != noteValues.rend(); ++value) {
        const std::int64_t above = value->length.numerator * grid.whole;
        if (above % value->length.denominator != 0) continue;
        const std::int64_t ticks = above / value->length.denominator;
        if (ticks <= range.length() && range.begin % ticks == 0) return ShapedTicks{{value->name, 0}, ticks};
    }
    return std::nullopt;
}

} // namespace

std::optional<NoteShape> oneShape(const TickRange& range, const TickGrid& grid) {
    return shapeFor(range.length(), grid);
}

std::optional<std::vector<ShapedTicks>> split(TickRange range, const TickGrid& grid) {
    std::vector<ShapedTicks> values;
    while (range.length() > 0) {
        const auto next = longestAt(range, grid);
        if (!next) return std::nullopt;
        values.push_back(*next);
        range.begin += next->ticks;
    }
    return values;
}

} // namespace piolo::score
