// SPDX-License-Identifier: GPL-3.0-or-later
// Identifies the running build of the program.
#pragma once

#include <string>

namespace piolo::journal {

/// The linker's build id of this program, which changes with its code. Empty if it has none. Any thread.
[[nodiscard]] std::string programId();

} // namespace piolo::journal
