// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures in the practice folder, named after a hash of their content.
#pragma once

#include "pictures/picture_file.h"

#include <string>
#include <string_view>

namespace piolo::pictures {

/// The path of the picture with that name; "" if the name is not valid for a picture.
[[nodiscard]] std::string picturePath(const std::string& folder, std::string_view name);

/// Any thread; waits for the disk. Saves a PNG or JPEG that has passed checkPicture() in the folder's
/// pictures/, whole or not at all, and returns its name: the first 32 hexadecimal digits of its SHA-256. An
/// existing picture is not written again. Faults: cannotMakeFolder, cannotWrite, diskFull.
Result<std::string> keepPicture(const std::string& folder, const PictureFile& picture);

} // namespace piolo::pictures
