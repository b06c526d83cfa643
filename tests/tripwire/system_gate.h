// SPDX-License-Identifier: GPL-3.0-or-later
// A gate between one thread and the kernel.
#pragma once

namespace piolo::tripwire {

/// From here on, the thread's next system call is caught. It is still made, and the gate stays open after it.
/// If the kernel has no such gate, ends the program with a line on stderr: a check that sees nothing would be
/// worthless. Linux 5.11 and later, x86-64.
void shutGate() noexcept;
/// Opens the gate. Returns the number of the call that was caught, or -1.
long openGate() noexcept;

} // namespace piolo::tripwire
