// SPDX-License-Identifier: GPL-3.0-or-later
// What a program does before it opens its first file.
#pragma once

namespace piolo::files {

/// Main thread, first of all. Opens /dev/null in the place of a standard stream that is closed, so that no
/// file gets its number and what is reported; and has a file that may not grow reported by the write that
/// fails, not by a signal that ends the program.
void startProcess() noexcept;

} // namespace piolo::files
