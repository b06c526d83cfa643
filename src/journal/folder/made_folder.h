// SPDX-License-Identifier: GPL-3.0-or-later
// Folders that are made when missing.
#pragma once

#include "core/base/result.h"

#include <string>

namespace piolo::journal {

/// Makes `path` and what is missing above it, durably: 0 or an errno value.
[[nodiscard]] int folderMade(const std::string& path);
/// The same with a fault: cannotMakeFolder.
Done makeFolder(const std::string& path);

} // namespace piolo::journal
