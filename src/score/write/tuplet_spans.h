// SPDX-License-Identifier: GPL-3.0-or-later
// Which stretches of a bar are tuplets.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace piolo::score {

/// From one moment of a bar to another, in ticks from where the bar would begin if it were whole.
struct TickRange {
    std::int64_t begin = 0;
    std::int64_t end = 0;
    [[nodiscard]] std::int64_t length() const noexcept { return end - begin; }
};

/// What a bar is measured by.
struct TickGrid {
    std::int64_t whole = 4; ///< ticks of a whole note
    std::int64_t beat = 1;
    std::int64_t bar = 4;
    /// Reached from the bar's beginning by halving whole notes.
    [[nodiscard]] bool isPlain(std::int64_t at) const noexcept;
};

/// `actual` units stand in the time of `normal` notes of the length `value`.
struct TupletSpan {
    std::size_t first = 0; ///< places in the pieces
    std::size_t last = 0;
    TickRange range; ///< whole, also where a pick-up has only the end of it
    std::int64_t unit = 1;
    std::int64_t value = 1; ///< in ticks, as if there were no tuplet
    std::int32_t actual = 1;
    std::int32_t normal = 1;
};

/// `pieces` follow one another and end on a plain moment. In the order of time.
[[nodiscard]] std::vector<TupletSpan> tupletSpans(std::span<const TickRange> pieces, const TickGrid& grid);

} // namespace piolo::score
