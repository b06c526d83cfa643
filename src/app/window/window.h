// SPDX-License-Identifier: GPL-3.0-or-later
// The window: plugs journal, engine, device and models together and shows the screens.
#pragma once

#include <string>

namespace piolo::app {

struct WindowOptions {
    std::string folder;   ///< "": the user's own
    std::string passage;  ///< id or exact title to open the drill at; "": where the screens begin
    std::string screen;   ///< "passages", "log" …; "": where the screens begin
    std::string language; ///< "system" or a language's code; "": as in the settings
    std::string shot;     ///< when not "": a PNG of the window goes there and the program ends
    int width = 0;        ///< of the window and its picture, 0: as it opens
    int height = 0;
};

/// Runs the window until it is closed. The exit code of the program. Faults go to standard error, one line.
int runWindow(int& argc, char** argv, const WindowOptions& options);

} // namespace piolo::app
