// SPDX-License-Identifier: GPL-3.0-or-later
// Draws a laid out staff: the same on the screen, in a file, and in print.
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
/// Ink on paper. A transparent `paper` leaves the ground as it is.
[[nodiscard]] StaffStyle lightStaffStyle();
/// The same in light ink on dark paper.
[[nodiscard]] StaffStyle darkStaffStyle();

/// What is marked, never by colour alone: the note has a frame around its place and an arrow below, the bar a
/// thick line below its staff.
struct StaffMarks {
    std::optional<std::size_t> note{}; ///< of the music
    std::optional<std::size_t> bar{};  ///< of the rhythm
};

/// In device-independent pixels.
[[nodiscard]] QSizeF sizeOf(const StaffLayout& layout);
/// The whole staff from 0,0. All signs and digits are outlines. Needs a QGuiApplication for its digits.
void drawStaff(QPainter& painter, const StaffLayout& layout, const StaffGlyphs& glyphs,
               const StaffStyle& style, const StaffMarks& marks = {});
/// The same of one system alone, its highest sign at y = 0.
void drawStaffSystem(QPainter& painter, const StaffLayout& layout, std::size_t system,
                     const StaffGlyphs& glyphs, const StaffStyle& style, const StaffMarks& marks = {});
/// What one system takes, in device-independent pixels: its marks below it included.
[[nodiscard]] double heightOf(const StaffLayout& layout, std::size_t system);

} // namespace piolo::plots
