// SPDX-License-Identifier: GPL-3.0-or-later
// The words of `piolo` without a verb.
#pragma once

#include "app/verbs/arguments.h"
#include "app/window/window.h"

namespace piolo::app {

struct WindowWords {
    WindowOptions options;
    bool help = false;
    bool version = false;
};

/// Reads --folder, --drill, --screen, --language, --shot, --size, --help and --version. Faults of use.
Result<WindowWords> readWindowWords(std::span<const std::string> words);

} // namespace piolo::app
