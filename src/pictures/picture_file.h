// SPDX-License-Identifier: GPL-3.0-or-later
// A file with a picture of music, as it is taken in: read whole, told what it is by its first bytes.
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

/// Any thread; waits for the disk. Whatever the name ends in, the first bytes decide. Faults: cannotRead
/// (also for what is no regular file), pictureTooLarge, notAPicture.
Result<PictureFile> readPictureFile(const std::string& path);

/// Any thread. Holds a PNG or JPEG against the limits and decodes it once, whole. Faults: pictureTooLarge,
/// brokenPicture.
Done checkPicture(const PictureFile& file);

} // namespace piolo::pictures
