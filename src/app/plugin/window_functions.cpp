// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/plugin/window_functions.h"

#include "app/window/window.h"
#include "app/window/window_arguments.h"
#include "app/window/window_choices.h"
#include "app/window/window_help.h"
#include "command/output/report.h"

namespace piolo::app {

namespace {

int sayAndEnd(std::string_view text) {
    const Done said = command::say(text);
    return said ? command::exitDone : command::report(said.fault());
}

int run(int& argc, char** argv, const std::vector<std::string>& words) {
    const auto read = readWindowArguments(words, windowChoices());
    if (!read) return command::report(read.fault());
    if (read->help) return sayAndEnd(windowHelp());
    if (read->version) return sayAndEnd("piolo " PIOLO_VERSION "\n");
    return runWindow(argc, argv, read->options);
}

} // namespace

} // namespace piolo::app

extern "C" const piolo::app::WindowFunctions pioloWindow{piolo::app::run};
