// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/tuplet_spans.h"

#include <numeric>

namespace piolo::score {

namespace {

std::int64_t oddPart(std::int64_t number) {
    while (number % 2 == 0) number /= 2;
    return number;
}

/// The largest number of equal plain notes that fill the span and are fewer than `actual`; if even the
/// smallest such number is larger, that number.
std::int64_t normalFor(std::int64_t length, std::int64_t actual, const TickGrid& grid) {
    std::int64_t normal = oddPart(length / std::gcd(length, grid.whole));
    while (2 * normal < actual) normal *= 2;
    return normal;
}

void measure(TupletSpan& span, std::span<const TickRange> pieces, const TickGrid& grid) {
    span.unit = span.range.length();
    for (std::size_t i = span.first; i <= span.last; ++i)
        span.unit = std::gcd(span.unit, std::gcd(pieces[i].begin - span.range.begin, pieces[i].length()));
    const std::int64_t actual = span.range.length() / span.unit;
    const std::int64_t normal = normalFor(span.range.length(), actual, grid);
    span.value = span.range.length() / normal;
    span.actual = static_cast<std::int32_t>(actual);
    span.normal = static_cast<std::int32_t>(normal);
}

/// True if two triplets fill one beat of a quarter or less: they become a sextuplet.
bool makeSextuplet(const TupletSpan& a, const TupletSpan& b, const TickGrid& grid) {
    const std::int64_t both = b.range.end - a.range.begin;
    return a.last + 1 == b.first && a.actual == 3 && b.actual == 3 && a.unit == b.unit && both == grid.beat &&
           a.range.begin % grid.beat == 0 && 4 * both <= grid.whole;
}

} // namespace

bool TickGrid::isPlain(std::int64_t at) const noexcept { return at % oddPart(whole) == 0; }

std::vector<TupletSpan> tupletSpans(std::span<const TickRange> pieces, const TickGrid& grid) {
    std::vector<TupletSpan> spans;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (grid.isPlain(pieces[i].begin) && grid.isPlain(pieces[i].end)) continue;
        TupletSpan span;
        span.first = span.last = i;
        while (span.last + 1 < pieces.size() && !grid.isPlain(pieces[span.last].end)) ++span.last;
        const std::int64_t begin = pieces[i].begin;
        span.range = {grid.isPlain(begin) ? begin : begin / grid.beat * grid.beat, pieces[span.last].end};
        measure(span, pieces, grid);
        i = span.last;
        if (!spans.empty() && makeSextuplet(spans.back(), span, grid)) {
            span.first = spans.back().first;
            span.range.begin = spans.back().range.begin;
            measure(span, pieces, grid);
            spans.pop_back();
        }
        spans.push_back(span);
    }
    return spans;
}

} // namespace piolo::score
