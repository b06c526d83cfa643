// SPDX-License-Identifier: GPL-3.0-or-later
// Why the program cannot start, in a window.
#pragma once

#include "core/base/fault.h"

namespace piolo::app {

/// Reports the fault and shows it in a small window until that is closed. Returns the exit status.
int showFault(const Fault& fault);

} // namespace piolo::app
