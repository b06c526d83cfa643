// SPDX-License-Identifier: GPL-3.0-or-later
// A staff as the bytes of a picture.
#pragma once

#include "core/music/staff_music.h"
#include "plots/picture_kind.h"

#include <cstddef>
#include <string>

namespace piolo::drawings {

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
[[nodiscard]] StaffPicture staffPicture(plots::PictureKind kind, const StaffMusic& music,
                                        const std::string& title, StaffPictureSize size);

} // namespace piolo::drawings
