// SPDX-License-Identifier: GPL-3.0-or-later
// Which build of the program is running.
#pragma once

#include <string>

namespace piolo::journal {

/// The linker's build id of this program: another for each change of its code. Empty when it has none. Any
/// thread.
[[nodiscard]] std::string programId();

} // namespace piolo::journal
