// SPDX-License-Identifier: GPL-3.0-or-later
// Draws a staff that is already laid out: the same on the screen, in a file and in print.
#pragma once

#include "plots/staff/staff_layout.h"

#include <QColor>
#include <QSizeF>

#include <optional>

class QPainter;

namespace piolo::plots {

struct StaffStyle {
    QColor paper, ink, faint, lit;
};
/// Ink on paper. A transparent `paper` leaves the background unchanged.
[[nodiscard]] StaffStyle lightStaffStyle();
/// The same in light ink on dark paper.
[[nodiscard]] StaffStyle darkStaffStyle();

/// What is highlighted, never by colour alone: a note gets a frame and an arrow below, a bar gets a thick
/// line below its staff.
struct StaffMarks {
    std::optional<std::size_t> note{}; ///< of the music
    std::optional<std::size_t> bar{};  ///< of the rhythm
};

/// The size of the whole staff, in device-independent pixels.
[[nodiscard]] QSizeF sizeOf(const StaffLayout& layout);
/// Draws the whole staff from 0,0. All signs and digits are outlines. Digits need a QGuiApplication.
void drawStaff(QPainter& painter, const StaffLayout& layout, const StaffGlyphs& glyphs,
               const StaffStyle& style, const StaffMarks& marks = {});
/// Draws one system only, with its highest sign at y = 0.
void drawStaffSystem(QPainter& painter, const StaffLayout& layout, std::size_t system,
                     const StaffGlyphs& glyphs, const StaffStyle& style, const StaffMarks& marks = {});
/// The height of one system, including the highlights below it, in device-independent pixels.
[[nodiscard]] double heightOf(const StaffLayout& layout, std::size_t system);

} // namespace piolo::plots
