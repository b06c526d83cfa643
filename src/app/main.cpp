// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/plugin/window_functions.h"
#include "command/output/report.h"
#include "command/verbs/run_verb.h"
#include "files/plugin.h"
#include "files/process_start.h"

int main(int argc, char** argv) {
    using namespace piolo;
    files::startProcess();
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (!words.empty() && !words.front().starts_with('-')) return command::runVerb(words);
    const auto window = files::pluginFunctions<app::WindowFunctions>();
    return window ? (*window)->run(argc, argv, words) : command::report(window.fault());
}
