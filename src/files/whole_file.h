// SPDX-License-Identifier: GPL-3.0-or-later
// A small file read at once.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <string>

namespace piolo::files {

/// All bytes of a regular file (or of a pipe, to its end). Fault cannotRead.
Result<std::string> wholeFile(const std::string& path);
/// The same, but only the first `most` bytes of a longer file.
Result<std::string> wholeFile(const std::string& path, std::size_t most);

} // namespace piolo::files
