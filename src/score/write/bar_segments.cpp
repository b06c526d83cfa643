// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/bar_segments.h"

#include <algorithm>

namespace piolo::score {

namespace {

class Filling {
public:
    explicit Filling(const TickGrid& grid) : grid_(grid) {}

    /// All times are measured from the bar line.
    void silence(TickRange gap) {
        if (gap.length() <= 0) return;
        const TickRange beats{(gap.begin + grid_.beat - 1) / grid_.beat * grid_.beat,
                              gap.end / grid_.beat * grid_.beat};
        TickRange middle = gap;
        if (!grid_.isPlain(gap.begin)) middle.begin = std::min(beats.begin, gap.end);
        if (!grid_.isPlain(gap.end)) middle.end = std::max(beats.end, middle.begin);
        for (const TickRange range :
             {TickRange{gap.begin, middle.begin}, middle, TickRange{middle.end, gap.end}})
            if (range.length() > 0) pieces_.push_back({{}, range});
    }
    void sound(BarSegment piece) { pieces_.push_back(std::move(piece)); }
    std::vector<BarSegment> take() { return std::move(pieces_); }

private:
    const TickGrid& grid_;
    std::vector<BarSegment> pieces_;
};

} // namespace

std::vector<BarSegment> barSegments(std::span<const Chord> chords, TickRange bar, const TickGrid& grid) {
    const std::int64_t line = bar.begin / grid.bar * grid.bar;
    Filling filling(grid);
    std::int64_t at = bar.begin;
    const auto first = std::ranges::partition_point(
        chords, [&](const Chord& chord) { return chord.range.end <= bar.begin; });
    for (auto chord = first; chord != chords.end() && chord->range.begin < bar.end; ++chord) {
        const TickRange inside{std::max(chord->range.begin, bar.begin), std::min(chord->range.end, bar.end)};
        filling.silence({at - line, inside.begin - line});
        filling.sound({chord->heads,
                       {inside.begin - line, inside.end - line},
                       chord->range.begin<bar.begin, chord->range.end> bar.end});
        at = inside.end;
    }
    filling.silence({at - line, bar.end - line});
    return filling.take();
}

} // namespace piolo::score
