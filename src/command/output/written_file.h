// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a file at once, in a folder that may have to be created.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace piolo::command {

/// Creates the parent folders of `path` and writes the file, whole or not at all. Faults: cannotMakeFolder,
/// cannotWrite, diskFull.
Done writeInFolder(const std::string& path, std::string_view bytes);

} // namespace piolo::command
