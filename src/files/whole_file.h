// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a small file at once.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <string>

namespace piolo::files {

/// All bytes of a regular file, or of a pipe up to its end. Fault: cannotRead.
Result<std::string> wholeFile(const std::string& path);
/// The same, but at most the first `most` bytes.
Result<std::string> wholeFile(const std::string& path, std::size_t most);

} // namespace piolo::files
