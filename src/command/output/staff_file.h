// SPDX-License-Identifier: GPL-3.0-or-later
// Draws a staff into a file.
#pragma once

#include "core/base/result.h"
#include "drawings/staff_picture.h"

#include <string>

namespace piolo::command {

/// Writes the picture to `path` and prints what a player should know about it. Faults: cannotRead if the
/// library that draws is missing, cannotWrite, diskFull.
Done writeStaff(const std::string& path, plots::PictureKind kind, const StaffMusic& music,
                const std::string& title, drawings::StaffPictureSize size);

} // namespace piolo::command
