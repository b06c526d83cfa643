// SPDX-License-Identifier: GPL-3.0-or-later
// One system under construction: every step adds signs and sees the room that earlier steps have taken.
#pragma once

#include "plots/staff/staff_columns.h"
#include "plots/staff/staff_layout.h"
#include "plots/staff/staff_sky.h"

#include <vector>

namespace piolo::plots {

/// What all systems of a staff share.
struct StaffScene {
    const StaffMusic& music;
    const StaffRhythm& rhythm;
    const std::vector<StaffColumn>& columns;
    const StaffGlyphs& glyphs;
};

/// A system under construction. `x` holds the column positions of events first … end.
struct StaffDraft {
    const StaffScene& scene;
    StaffSystem system;
    StaffSky sky;
    std::size_t first = 0;
    std::size_t end = 0;
    std::vector<double> x;
    std::vector<double> stemEnds; ///< y, for the same events
    double right = 0;             ///< where the staff ends

    [[nodiscard]] bool holds(std::size_t event) const { return event >= first && event < end; }
    [[nodiscard]] double xOf(std::size_t event) const { return x[event - first]; }
    [[nodiscard]] double& stemEnd(std::size_t event) { return stemEnds[event - first]; }
    [[nodiscard]] const StaffColumn& column(std::size_t event) const { return scene.columns[event]; }
    [[nodiscard]] const StaffEvent& event(std::size_t index) const { return scene.rhythm.events[index]; }
    /// The middle of an event's heads.
    [[nodiscard]] double middleOf(std::size_t event) const {
        return xOf(event) + column(event).headWidth / 2;
    }

    void add(StaffSign sign);
    void add(StaffWord word);
    void add(StaffStroke stroke);
};

/// The y of a position: steps above the lowest line.
[[nodiscard]] constexpr double staffY(int position) noexcept { return 4 - position / 2.0; }

/// The width of clef, key signature and, in the first system, meter: from the left edge to the first bar.
[[nodiscard]] double headWidth(const StaffMusic& music, const StaffGlyphs& glyphs, bool first);
void addHead(StaffDraft& draft, bool first);
/// Heads, accidentals, dots, ledger lines, rests.
void addColumns(StaffDraft& draft);
/// Stems, beams and flags.
void addStems(StaffDraft& draft);
void addTies(StaffDraft& draft);
/// Staccato, tenuto and accent: next to the heads, away from the stem.
void addArticulations(StaffDraft& draft);
void addTuplets(StaffDraft& draft);
void addSlurs(StaffDraft& draft);

} // namespace piolo::plots
