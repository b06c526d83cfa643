// SPDX-License-Identifier: GPL-3.0-or-later
// One attempt to append to a journal file, and why it failed, as a fault.
#pragma once

#include "core/base/fault.h"
#include "journal/folder/ports.h"

#include <string>

namespace piolo::journal {

struct Attempt {
    int error = 0;        ///< 0, or as from an AppendFile
    bool written = false; ///< whether only the sync failed
};
/// Appends all of `text` and syncs it; waits for the disk. `file` may be null if it could not be opened: then
/// errno says why.
[[nodiscard]] Attempt append(AppendFile* file, const std::string& text);

/// `error`: as from an AppendFile. Faults: cannotWrite, diskFull, notARegularFile, folderGone.
[[nodiscard]] Fault writeTrouble(const std::string& path, int error);

} // namespace piolo::journal
