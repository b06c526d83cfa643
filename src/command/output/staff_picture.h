// SPDX-License-Identifier: GPL-3.0-or-later
// A staff as the bytes of a picture.
#pragma once

#include "command/output/curve_picture.h"
#include "core/music/staff_music.h"

#include <QString>

#include <cstddef>
#include <string>

namespace piolo::command {

/// In device-independent pixels, 96 per inch. The height depends on the music.
struct StaffPictureSize {
    static constexpr int usualWidth = 960;
    static constexpr int usualSpace = 9;

    int width = usualWidth;
    int space =
        usualSpace; ///< pixels per staff space; smaller if even a single bar is wider than the picture
};

struct StaffPicture {
    std::string bytes;        ///< empty if nothing could be drawn
    std::size_t inexact = 0;  ///< number of notes drawn as the nearest value that can be written
    bool plainShapes = false; ///< true if the music font is not installed
};

/// Draws without a display, creating an application if there is none. `title` is what a screen reader reads
/// for an SVG, and the title of a PDF.
[[nodiscard]] StaffPicture staffPicture(PictureKind kind, const StaffMusic& music, const QString& title,
                                        StaffPictureSize size);
/// What a player should know about the picture, one line each; "" if there is nothing.
[[nodiscard]] std::string remarksOn(const StaffPicture& picture);

} // namespace piolo::command
