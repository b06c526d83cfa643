// SPDX-License-Identifier: GPL-3.0-or-later
// The window with everything that it links; it is loaded when no verb is given.
#pragma once

#include <string>
#include <vector>

namespace piolo::app {

struct WindowFunctions {
    static constexpr const char* plugin = "window";
    static constexpr const char* object = "pioloWindow";

    /// Does what `words`, the arguments of `piolo` without a verb, ask for. `argc` and `argv` are those of
    /// main(). Returns the program's exit status; faults are written to standard error, one per line.
    int (*run)(int& argc, char** argv, const std::vector<std::string>& words);
};

} // namespace piolo::app
