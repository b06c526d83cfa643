// SPDX-License-Identifier: GPL-3.0-or-later
// The arguments of `piolo` without a verb.
#pragma once

#include "app/window/window.h"
#include "command/options/arguments.h"

#include <string_view>
#include <vector>

namespace piolo::app {

struct WindowArguments {
    WindowOptions options;
    bool help = false;
    bool version = false;
};

/// The words that may follow an option; the first is the default.
struct WindowChoices {
    std::vector<std::string_view> screens;
    std::vector<std::string_view> languages;
};

/// The options of the window.
[[nodiscard]] command::OptionSpecs windowOptions(const WindowChoices& choices);
/// Reads --folder, --drill, --screen, --language, --shot, --size, --help and --version. Faults: wrong use.
Result<WindowArguments> readWindowArguments(std::span<const std::string> words, const WindowChoices& choices);

} // namespace piolo::app
