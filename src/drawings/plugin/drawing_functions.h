// SPDX-License-Identifier: GPL-3.0-or-later
// What the command draws; it is loaded when something is to be drawn, so that other verbs start without Qt
// Gui.
#pragma once

#include "drawings/curve_picture.h"
#include "drawings/sheet_file.h"
#include "drawings/staff_picture.h"

namespace piolo::drawings {

/// The functions of this room, as implemented in the plugin.
struct DrawingFunctions {
    static constexpr const char* plugin = "drawing";
    static constexpr const char* object = "pioloDrawing";

    decltype(&drawings::curveFile) curveFile;
    decltype(&drawings::sheetFile) sheetFile;
    decltype(&drawings::staffPicture) staffPicture;
};

} // namespace piolo::drawings
