// SPDX-License-Identifier: GPL-3.0-or-later
// What stands at one moment on a staff: heads, accidentals and dots beside each other, and the room they
// take.
#pragma once

#include "plots/staff/staff_glyphs.h"
#include "plots/staff/staff_rhythm.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo::plots {

/// x from the left edge of a head that stands alone, in staff spaces.
struct StaffHead {
    std::size_t note = 0;
    int position = 0; ///< steps above the lowest line
    double x = 0;
    std::optional<StaffGlyph> accidental{};
    double accidentalX = 0;
    int dotPosition = 0;
};

struct StaffColumn {
    std::vector<StaffHead> heads;            ///< lowest first; none: a rest
    StaffGlyph sign = StaffGlyph::blackHead; ///< the head, or the rest
    bool stemUp = true;
    bool hasStem = false;
    bool hasFlag = false; ///< no beam
    double headWidth = 0;
    double dotsX = 0;
    double left = 0;  ///< room taken left of x = 0, at least 0
    double right = 0; ///< and to the right of it

    [[nodiscard]] int lowest() const { return heads.empty() ? 4 : heads.front().position; }
    [[nodiscard]] int highest() const { return heads.empty() ? 4 : heads.back().position; }
    /// Where a stem stands.
    [[nodiscard]] double stemX() const;
};

/// How far ledger lines reach beyond a head.
inline constexpr double ledgerReach = 0.3;
inline constexpr double stemWidth = 0.12;

/// One for each event. Stems point away from the outermost head; all of a beam's one way.
[[nodiscard]] std::vector<StaffColumn> columnsOf(const StaffMusic& music, const StaffRhythm& rhythm,
                                                 const StaffGlyphs& glyphs);

} // namespace piolo::plots
