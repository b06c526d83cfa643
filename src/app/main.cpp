// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window.h"
#include "app/window/window_arguments.h"
#include "app/window/window_choices.h"
#include "app/window/window_help.h"
#include "command/output/report.h"
#include "command/verbs/run_verb.h"

namespace {

using namespace piolo;

int sayAndEnd(std::string_view text) {
    const Done said = command::say(text);
    return said ? command::exitDone : command::report(said.fault());
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (!words.empty() && !words.front().starts_with('-')) return command::runVerb(words);
    const auto read = app::readWindowArguments(words, app::windowChoices());
    if (!read) return command::report(read.fault());
    if (read->help) return sayAndEnd(app::windowHelp());
    if (read->version) return sayAndEnd("piolo " PIOLO_VERSION "\n");
    return app::runWindow(argc, argv, read->options);
}
