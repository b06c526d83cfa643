// SPDX-License-Identifier: GPL-3.0-or-later
// The written values of a passage: notes and rests with flags, dots, ties, beams and tuplets.
#pragma once

#include "plots/staff/staff_time.h"

#include "core/music/staff_music.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo::plots {

/// One sign of time: a head or a chord with its value, or a rest.
struct StaffEvent {
    StaffTicks onset = 0; ///< from the passage's first moment, as drawn
    StaffTicks length = 0;
    std::size_t bar = 0;
    NoteValue value;
    bool wholeBar = false;          ///< a rest that stands for the bar, whatever its meter
    std::vector<std::size_t> notes; ///< of the music, a chord's all; none: a rest
    bool begins = true;             ///< false: tied to the event before it
    bool ends = true;               ///< false: tied to the event after it

    [[nodiscard]] bool isRest() const noexcept { return notes.empty(); }
};

/// Events that stand together, all in one bar.
struct StaffBeam {
    std::size_t first = 0;
    std::size_t last = 0;
};
struct StaffTuplet {
    std::size_t first = 0;
    std::size_t last = 0;
    int number = 3; ///< notes in the time of `against`
    int against = 2;
    bool bracket = false; ///< no beam shows the group
};

struct StaffBar {
    int number = 1; ///< the part's own
    bool pickup = false;
    StaffTicks start = 0; ///< of the whole bar: below 0 for a pick-up
    StaffTicks end = 0;
    std::size_t first = 0; ///< its events: first … end
    std::size_t endEvent = 0;
};

struct StaffRhythm {
    std::vector<StaffBar> bars;
    std::vector<StaffEvent> events;
    std::vector<StaffBeam> beams;
    std::vector<StaffTuplet> tuplets;
    /// Notes that are not drawn exactly as long or where they are: no notation here can say it.
    std::vector<std::size_t> inexact;
};

/// Every note once, in the order of time; docs/staff.md has the rules. At most Passage::mostNotes notes and
/// Music::mostBars bars are drawn.
[[nodiscard]] StaffRhythm rhythmOf(const StaffMusic& music);

} // namespace piolo::plots
