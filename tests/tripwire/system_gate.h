// SPDX-License-Identifier: GPL-3.0-or-later
// A gate between one thread and the kernel.
#pragma once

namespace piolo::tripwire {

/// From here on the thread's next system call is caught. It is made all the same, and the gate stays open
/// after it. Ends the program with a line on stderr where the kernel has no such gate: a watch that sees
/// nothing would be no watch. Linux 5.11 and later, x86-64.
void shutGate() noexcept;
/// Opens the gate. The number of the call that was caught, or -1.
long openGate() noexcept;

} // namespace piolo::tripwire
