// SPDX-License-Identifier: GPL-3.0-or-later
// Time on a staff in whole ticks, and the parts of a bar whose notes are written together.
#pragma once

#include "core/time/meter.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace piolo::plots {

using StaffTicks = std::int64_t;

/// 2⁸·3²·5·7 per whole note: 128ths, and 3, 5, 6, 7 and 9 in any beat, are whole numbers of ticks.
inline constexpr StaffTicks ticksToWhole = 80'640;

/// A moment or a length in ticks.
struct StaffMoment {
    StaffTicks ticks = 0; ///< rounded to the nearest
    bool exact = true;
};
[[nodiscard]] StaffMoment ticksOf(Fraction time) noexcept;

/// A note value: 0 whole, 1 half, 2 quarter … 7 hundred-and-twenty-eighth, with dots.
struct NoteValue {
    static constexpr int shortest = 7;

    int flags = 2; ///< the power of two below the whole note; 3 and more have flags or beams
    int dots = 0;
    bool operator==(const NoteValue&) const = default;
};
/// Without a tuplet.
[[nodiscard]] StaffTicks ticksOf(NoteValue value) noexcept;
/// The value with that length, without dots or with one; nothing if there is none.
[[nodiscard]] std::optional<NoteValue> valueOf(StaffTicks ticks) noexcept;

/// A part of a bar: a beat, or a group of the meter. Its notes share a beam and, if they need one, a tuplet.
struct StaffCell {
    StaffTicks start = 0; ///< from the beginning of the bar
    StaffTicks length = 0;
    int tuplet = 0; ///< for example 5: five notes in the time of `against`; 0: no tuplet
    int against = 0;
    StaffTicks unit = 0; ///< of its shortest note
    int unitFlags = 0;   ///< how that note is written
    bool fits = true;    ///< all its notes can be written exactly

    [[nodiscard]] StaffTicks end() const noexcept { return start + length; }
    /// Half, quarter and so on, but not three eighths.
    [[nodiscard]] bool isPlain() const noexcept;
};

/// The cells of a bar whose notes begin or end at `moments` (measured from the beginning of the bar,
/// ascending). Cells are the groups of the meter, or its beats; a felt beat below a quarter is not written as
/// such in a meter of quarters. Longer cells are split into quarters where shorter notes need it.
[[nodiscard]] std::vector<StaffCell> cellsOf(const Meter& meter, const std::vector<StaffTicks>& moments);

} // namespace piolo::plots
