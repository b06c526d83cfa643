// SPDX-License-Identifier: GPL-3.0-or-later
// What the command says on standard output and standard error.
#pragma once

#include "command/output/exit_code.h"
#include "core/base/result.h"

#include <string_view>

namespace piolo::command {

/// Prints "piolo: E123: FILE:LINE: what; what to do" on standard error and gives the exit code that belongs
/// to the number.
ExitCode tell(const Fault& fault);
/// Writes to standard output and flushes. Faults: cannotWrite, diskFull, with the place "-".
Done say(std::string_view text);
/// The same for "E123: FILE:LINE: what; what to do".
Done sayFault(const Fault& fault);

} // namespace piolo::command
