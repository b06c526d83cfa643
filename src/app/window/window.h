// SPDX-License-Identifier: GPL-3.0-or-later
// The window: connects journal, engine, device and models and shows the screens.
#pragma once

#include <string>

namespace piolo::app {

struct WindowOptions {
    std::string folder;   ///< "": the user's default folder
    std::string passage;  ///< id or exact title of the passage to drill; "": the usual first screen
    std::string screen;   ///< "passages", "log" …; "": the usual first screen
    std::string language; ///< "system" or the code of a language; "": as in the settings
    std::string shot;     ///< if not "", saves a PNG of the window there and exits
    int width = 0;        ///< of the window and its picture; 0: the default size
    int height = 0;
};

/// Runs the window until it is closed. Returns the program's exit status. Faults are written to standard
/// error, one per line.
int runWindow(int& argc, char** argv, const WindowOptions& options);

} // namespace piolo::app
