// SPDX-License-Identifier: GPL-3.0-or-later
// The notation of a passage's rhythm: notes and rests with flags, dots, ties, beams and tuplets.
#pragma once

#include "plots/staff/staff_time.h"

#include "core/music/staff_music.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo::plots {

/// One rhythmic sign: a note or chord with its value, or a rest.
struct StaffEvent {
    StaffTicks onset = 0; ///< from the beginning of the passage, as drawn
    StaffTicks length = 0;
    std::size_t bar = 0;
    NoteValue value;
    bool wholeBar = false;          ///< a rest for the whole bar, whatever its meter
    std::vector<std::size_t> notes; ///< of the music, all notes of a chord; empty for a rest
    bool begins = true;             ///< false: tied to the previous event
    bool ends = true;               ///< false: tied to the next event

    [[nodiscard]] bool isRest() const noexcept { return notes.empty(); }
};

/// Events under one beam, all in one bar.
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
    int number = 1; ///< as in the part
    bool pickup = false;
    StaffTicks start = 0; ///< of the full bar: negative for a pick-up
    StaffTicks end = 0;
    std::size_t first = 0; ///< its events: first … end
    std::size_t endEvent = 0;
};

struct StaffRhythm {
    std::vector<StaffBar> bars;
    std::vector<StaffEvent> events;
    std::vector<StaffBeam> beams;
    std::vector<StaffTuplet> tuplets;
    /// Notes whose drawn length or position is not exact, because no notation here can express it.
    std::vector<std::size_t> inexact;
};

/// Every note once, in order of time; docs/staff.md has the rules. At most Passage::mostNotes notes and
/// Music::mostBars bars are drawn.
[[nodiscard]] StaffRhythm rhythmOf(const StaffMusic& music);

} // namespace piolo::plots
