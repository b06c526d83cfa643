// SPDX-License-Identifier: GPL-3.0-or-later
// How much room bars take, and where to break a staff into systems.
#pragma once

#include "plots/staff/staff_columns.h"

#include <cstddef>
#include <vector>

namespace piolo::plots {

/// Distances in staff spaces. `stretch` is the room given to a quarter note; 0 gives the least that keeps
/// signs apart.
class StaffSpacing {
public:
    /// The usual room for a quarter note.
    static constexpr double usual = 3.4;
    /// The widest stretch of a single system, and of one of several. A system that this does not fill ends
    /// before the edge.
    static constexpr double mostAlone = 9;
    static constexpr double most = 18;

    StaffSpacing(const StaffMusic& music, const StaffRhythm& rhythm, const std::vector<StaffColumn>& columns);

    /// The positions of the bar's columns (their x = 0), measured from the bar's left edge.
    [[nodiscard]] std::vector<double> columnsIn(std::size_t bar, double stretch) const;
    [[nodiscard]] double widthOf(std::size_t bar, double stretch) const;

private:
    [[nodiscard]] double wished(std::size_t event, double stretch) const;

    const StaffRhythm& rhythm_;
    const std::vector<StaffColumn>& columns_;
    bool endsHere_;
    std::vector<bool> tied_; ///< to the previous event
};

/// The bars of a system: first … end.
struct StaffBreak {
    std::size_t first = 0;
    std::size_t end = 0;
};
/// As few systems as can hold bars of those widths, then as even as that number allows. `firstHead` and
/// `head` are the room that clef and signature take in the first system and in the others.
[[nodiscard]] std::vector<StaffBreak> breaksOf(const std::vector<double>& widths, double firstHead,
                                               double head, double width);

} // namespace piolo::plots
