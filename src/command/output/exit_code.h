// SPDX-License-Identifier: GPL-3.0-or-later
// The exit statuses of the program.
#pragma once

namespace piolo::command {

/// Success; the input or output is at fault; wrong usage.
enum ExitCode : int { exitDone = 0, exitInput = 1, exitUse = 2 };

} // namespace piolo::command
