// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures in the practice folder, each named by what it holds.
#pragma once

#include "pictures/picture_file.h"

#include <string>
#include <string_view>

namespace piolo::pictures {

/// Where a picture of that name is; "" for a name that no picture may have.
[[nodiscard]] std::string picturePath(const std::string& folder, std::string_view name);

/// Any thread; waits for the disk. Puts a PNG or JPEG, which was checked, into the folder's pictures/, whole
/// or not at all, and gives its name: the first 32 digits of its SHA-256. What is there already is not
/// written again. Faults: cannotMakeFolder, cannotWrite, diskFull.
Result<std::string> keepPicture(const std::string& folder, const PictureFile& picture);

} // namespace piolo::pictures
