// SPDX-License-Identifier: GPL-3.0-or-later
// Which fault a failed system call leads to.
#pragma once

#include "core/base/fault.h"

#include <string>

namespace piolo::files {

/// The fault for a write that failed with `error` (an errno value): diskFull for a full disk or an exceeded
/// quota, otherwise cannotWrite. The fault's argument is the system's own error text.
[[nodiscard]] Fault writeFault(const std::string& path, int error);
/// The fault cannotRead with the system's own error text.
[[nodiscard]] Fault readFault(const std::string& path, int error);

} // namespace piolo::files
