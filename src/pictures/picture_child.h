// SPDX-License-Identifier: GPL-3.0-or-later
// Pages are drawn and pictures decoded in a process of their own: whatever a file makes of them ends with it.
#pragma once

#include "pictures/picture_file.h"

#include <functional>
#include <string>

namespace piolo::pictures {

/// Called from time to time while the child works; return true to stop it.
using GiveUp = std::function<bool()>;

/// The child's exit codes besides 0: standard output has a fault, or nothing.
inline constexpr int childFault = 3;
inline constexpr int childFailed = 4;

/// Any thread; takes up to mostChildMillis. Starts the child, which has so much time and memory
/// (picture_limits.h), with the file's bytes, and returns what it writes, at most mostBytes. `task` is
/// "count", "page" (with its `number`), "png" or "jpeg". It is a limit, no sandbox: the child may do what the
/// program may, but it writes no file. Faults: what the child reports; pageTooSlow (also if `giveUp` stopped
/// it), pictureTooHeavy, cannotRead (there is no child).
Result<std::string> workInChild(const PictureFile& file, const char* task, int number, const GiveUp& giveUp);

} // namespace piolo::pictures
