// SPDX-License-Identifier: GPL-3.0-or-later
// A staff as the bytes of a picture.
#pragma once

#include "command/output/curve_picture.h"
#include "core/music/staff_music.h"

#include <QString>

#include <cstddef>
#include <string>

namespace piolo::command {

/// In device-independent pixels, 96 to the inch. The height is what the music takes.
struct StaffPictureSize {
    static constexpr int usualWidth = 960;
    static constexpr int usualSpace = 9;

    int width = usualWidth;
    int space =
        usualSpace; ///< of the staff, from line to line; less where one bar alone is wider than the picture
};

struct StaffPicture {
    std::string bytes;        ///< empty when nothing could be drawn
    std::size_t inexact = 0;  ///< notes drawn as the nearest that can be written
    bool plainShapes = false; ///< the music font is not installed
};

/// Draws without a display, through an application of its own where there is none. `title` is what a screen
/// reader says of an SVG, and a PDF's title.
[[nodiscard]] StaffPicture staffPicture(PictureKind kind, const StaffMusic& music, const QString& title,
                                        StaffPictureSize size);
/// What a player should know of the picture, one line each; "" when there is nothing.
[[nodiscard]] std::string remarksOn(const StaffPicture& picture);

} // namespace piolo::command
