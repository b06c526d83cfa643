// SPDX-License-Identifier: GPL-3.0-or-later
// Leaves out what Qt prints that says nothing to a player.
#pragma once

namespace piolo::app {

/// Main thread, before the application object is made. Without XDG_RUNTIME_DIR, as over a network login, Qt
/// makes a folder of its own and says so on standard error each time; that line is dropped, others pass.
void quietStart();

} // namespace piolo::app
