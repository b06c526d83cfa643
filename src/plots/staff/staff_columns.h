// SPDX-License-Identifier: GPL-3.0-or-later
// What is at one moment on a staff: heads, accidentals and dots side by side, and the room they take.
#pragma once

#include "plots/staff/staff_glyphs.h"
#include "plots/staff/staff_rhythm.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo::plots {

/// x is measured from the left edge of a single head, in staff spaces.
struct StaffHead {
    std::size_t note = 0;
    int position = 0; ///< steps above the lowest line
    double x = 0;
    std::optional<StaffGlyph> accidental{};
    double accidentalX = 0;
    int dotPosition = 0;
};

struct StaffColumn {
    std::vector<StaffHead> heads;            ///< lowest first; empty for a rest
    StaffGlyph sign = StaffGlyph::blackHead; ///< the head or the rest
    bool stemUp = true;
    bool hasStem = false;
    bool hasFlag = false; ///< it has no beam
    double headWidth = 0;
    double dotsX = 0;
    double left = 0;  ///< room taken to the left of x = 0, at least 0
    double right = 0; ///< room taken to the right of x = 0

    [[nodiscard]] int lowest() const { return heads.empty() ? 4 : heads.front().position; }
    [[nodiscard]] int highest() const { return heads.empty() ? 4 : heads.back().position; }
    /// Where a stem goes.
    [[nodiscard]] double stemX() const;
};

/// How far ledger lines extend beyond a head.
inline constexpr double ledgerReach = 0.3;
inline constexpr double stemWidth = 0.12;

/// One column for each event. Stems point away from the outermost head; all stems of a beam point the same
/// way.
[[nodiscard]] std::vector<StaffColumn> columnsOf(const StaffMusic& music, const StaffRhythm& rhythm,
                                                 const StaffGlyphs& glyphs);

/// From one dot of a note to its next, in staff spaces.
inline constexpr double dotStep = 0.55;

} // namespace piolo::plots
