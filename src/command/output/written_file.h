// SPDX-License-Identifier: GPL-3.0-or-later
// A file written at once, in a folder that may have to be made.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace piolo::command {

/// Makes the folders above `path` and puts the file there, whole or not at all. Faults: cannotMakeFolder,
/// cannotWrite, diskFull.
Done writeInFolder(const std::string& path, std::string_view bytes);

} // namespace piolo::command
