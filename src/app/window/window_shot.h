// SPDX-License-Identifier: GPL-3.0-or-later
// A picture of the window, for pages and for places without a display.
#pragma once

#include "app/window/window.h"

class QQuickWindow;

namespace piolo::app {

/// Waits until the window has been drawn, writes it to options.shot (PNG), and ends. The exit code of the
/// program.
int shootWindow(QQuickWindow& window, const WindowOptions& options);

} // namespace piolo::app
