// SPDX-License-Identifier: GPL-3.0-or-later
// The words of `piolo` without a verb.
#pragma once

#include "app/window/window.h"
#include "command/options/arguments.h"

namespace piolo::app {

struct WindowArguments {
    WindowOptions options;
    bool help = false;
    bool version = false;
};

/// The options of the window.
[[nodiscard]] command::OptionSpecs windowOptions();
/// Reads --folder, --drill, --screen, --language, --shot, --size, --help and --version. Faults of use.
Result<WindowArguments> readWindowArguments(std::span<const std::string> words);

} // namespace piolo::app
