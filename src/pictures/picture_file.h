// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a file with a picture of music; its first bytes tell the format.
#pragma once

#include "core/base/result.h"

#include <functional>
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

/// Checks a PNG or JPEG against the limits and decodes all of it once, which may take any time: only the
/// child does that (picture_child.h). Faults: pictureTooLarge, brokenPicture.
Done decodePicture(const PictureFile& file);
/// Any thread. The same in the child. Faults also: those of workInChild().
Done checkPicture(const PictureFile& file, const std::function<bool()>& giveUp);
/// Any thread. True if a regular file has that name, not by a link, and begins like a PNG or JPEG.
[[nodiscard]] bool isPictureFile(const std::string& path);

} // namespace piolo::pictures
