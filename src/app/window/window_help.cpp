// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window_help.h"

#include "app/window/window_choices.h"
#include "command/verbs/verb_help.h"

namespace piolo::app {

std::string windowHelp() {
    command::OptionSpecs options = windowOptions(windowChoices());
    options.push_back({"--version", "", "", "prints the version"});
    return "piolo: a metronome whose tempo follows how cleanly you play\n\n"
           "piolo [OPTION VALUE]...   opens the window\n" +
           command::verbLines() + "piolo VERB --help   explains a verb and its options\n\n" +
           command::optionLines(options) +
           "\nExit code: 0 done, 1 something is wrong with the input or output, 2 wrong usage\n"
           "\nExample: piolo --folder ~/spring-concert --drill \"Letter C, bars 41 to 48\"\n";
}

} // namespace piolo::app
