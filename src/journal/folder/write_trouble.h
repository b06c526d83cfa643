// SPDX-License-Identifier: GPL-3.0-or-later
// Why nothing can be appended to a journal file, as a fault.
#pragma once

#include "core/base/fault.h"

#include <string>

namespace piolo::journal {

/// `error`: as from an AppendFile. Faults: cannotWrite, diskFull, notARegularFile, folderGone.
[[nodiscard]] Fault writeTrouble(const std::string& path, int error);

} // namespace piolo::journal
