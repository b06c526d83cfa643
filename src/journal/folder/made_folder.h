// SPDX-License-Identifier: GPL-3.0-or-later
// Creates folders if they are missing.
#pragma once

#include "core/base/result.h"

#include <string>

namespace piolo::journal {

/// Creates `path` and missing parents durably. Returns 0 or an errno value.
[[nodiscard]] int folderMade(const std::string& path);
/// The same, but returns a fault: cannotMakeFolder.
Done makeFolder(const std::string& path);

} // namespace piolo::journal
