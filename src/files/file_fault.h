// SPDX-License-Identifier: GPL-3.0-or-later
// What a failed system call is called.
#pragma once

#include "core/base/fault.h"

#include <string>

namespace piolo::files {

/// The fault of a write that failed with `error` (an errno value): diskFull for a full disk or quota, else
/// cannotWrite. The argument is the system's own text.
[[nodiscard]] Fault writeFault(const std::string& path, int error);
/// cannotRead with the system's own text.
[[nodiscard]] Fault readFault(const std::string& path, int error);

} // namespace piolo::files
