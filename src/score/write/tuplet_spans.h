// SPDX-License-Identifier: GPL-3.0-or-later
// Which stretches of a bar are tuplets.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace piolo::score {

/// From one moment of a bar to another, in ticks from where the bar would begin if it were full.
struct TickRange {
    std::int64_t begin = 0;
    std::int64_t end = 0;
    [[nodiscard]] std::int64_t length() const noexcept { return end - begin; }
};

/// The units in which a bar is measured.
struct TickGrid {
    std::int64_t whole = 4; ///< ticks per whole note
    std::int64_t beat = 1;
    std::int64_t bar = 4;
    /// True if the moment can be reached from the beginning of the bar in powers of two of a whole note.
    [[nodiscard]] bool isPlain(std::int64_t at) const noexcept;
};

/// `actual` units take the time of `normal` notes of length `value`.
struct TupletSpan {
    std::size_t first = 0; ///< index of the first piece
    std::size_t last = 0;
    TickRange range; ///< of the full tuplet, even if a pick-up contains only its end
    std::int64_t unit = 1;
    std::int64_t value = 1; ///< in ticks, as without a tuplet
    std::int32_t actual = 1;
    std::int32_t normal = 1;
};

/// The tuplets in order of time. `pieces` must follow one another and end on a plain moment.
[[nodiscard]] std::vector<TupletSpan> tupletSpans(std::span<const TickRange> pieces, const TickGrid& grid);

} // namespace piolo::score
