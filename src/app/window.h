// SPDX-License-Identifier: GPL-3.0-or-later
// The window: plugs journal, engine, device and models together and shows the screens.
#pragma once

#include <string>

namespace piolo::app {

struct WindowOptions {
    std::string folder;  ///< "": the user's own
    std::string passage; ///< id or exact title to open the drill at; "": the last one
    std::string shot;    ///< when not "": write screenshots there and end
};

/// Runs the window until it is closed. The exit code of the program.
int runWindow(int& argc, char** argv, const WindowOptions& options);

} // namespace piolo::app
