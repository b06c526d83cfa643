// SPDX-License-Identifier: GPL-3.0-or-later
// A picture of the window, for pages and for systems without a display.
#pragma once

#include "app/window/window.h"

class QQuickWindow;

namespace piolo::app {

/// Waits until the window has been drawn, saves it to options.shot (PNG) and exits. Returns the program's
/// exit status.
int shootWindow(QQuickWindow& window, const WindowOptions& options);

} // namespace piolo::app
