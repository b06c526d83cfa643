// SPDX-License-Identifier: GPL-3.0-or-later
// How much room bars take, and where a staff is broken.
#pragma once

#include "plots/staff/staff_columns.h"

#include <cstddef>
#include <vector>

namespace piolo::plots {

/// Distances in staff spaces; `stretch`: what a quarter note is given, 0 for the least that keeps signs
/// apart.
class StaffSpacing {
public:
    /// A quarter note's usual room.
    static constexpr double usual = 3.4;
    /// No system that stands alone is pulled wider than this, and none of several than that; it then ends
    /// before the edge.
    static constexpr double mostAlone = 9;
    static constexpr double most = 18;

    StaffSpacing(const StaffMusic& music, const StaffRhythm& rhythm, const std::vector<StaffColumn>& columns);

    /// Where the bar's columns stand (their x = 0), counted from the bar's left edge.
    [[nodiscard]] std::vector<double> columnsIn(std::size_t bar, double stretch) const;
    [[nodiscard]] double widthOf(std::size_t bar, double stretch) const;

private:
    [[nodiscard]] double wished(std::size_t event, double stretch) const;

    const StaffRhythm& rhythm_;
    const std::vector<StaffColumn>& columns_;
    bool endsHere_;
    std::vector<bool> tied_; ///< to the event before
};

/// The bars of a system: first … end.
struct StaffBreak {
    std::size_t first = 0;
    std::size_t end = 0;
};
/// As few systems as hold bars of those widths, and then as even as that number allows. `firstHead` and
/// `head`: what clef and signature take in the first system and in the others.
[[nodiscard]] std::vector<StaffBreak> breaksOf(const std::vector<double>& widths, double firstHead,
                                               double head, double width);

} // namespace piolo::plots
