// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a file with a picture of music; its first bytes tell the format.
#pragma once

#include "core/base/result.h"

#include <string>

namespace piolo::pictures {

enum class PictureKind { png, jpeg, pdf };

struct PictureFile {
    std::string path;
    std::string bytes;
    PictureKind kind = PictureKind::png;
};

/// Any thread; waits for the disk. The first bytes decide the format, whatever the file name. Faults:
/// cannotRead (also if it is not a regular file), pictureTooLarge, notAPicture.
Result<PictureFile> readPictureFile(const std::string& path);

/// Any thread. Checks a PNG or JPEG against the limits and decodes all of it once. Faults: pictureTooLarge,
/// brokenPicture.
Done checkPicture(const PictureFile& file);

} // namespace piolo::pictures
