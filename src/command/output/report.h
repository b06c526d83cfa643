// SPDX-License-Identifier: GPL-3.0-or-later
// What the command writes to standard output and standard error.
#pragma once

#include "command/output/exit_code.h"
#include "core/base/result.h"

#include <string_view>

namespace piolo::command {

/// Writes "piolo: E123: FILE:LINE: what; what to do" to standard error and returns the exit status for that
/// number.
ExitCode report(const Fault& fault);
/// Writes to standard output and flushes it. Faults: cannotWrite, diskFull, with the location "-".
Done say(std::string_view text);
/// The same for "E123: FILE:LINE: what; what to do".
Done sayFault(const Fault& fault);

} // namespace piolo::command
