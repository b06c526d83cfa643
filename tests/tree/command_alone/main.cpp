// SPDX-License-Identifier: GPL-3.0-or-later
// The command without the window: links everything that a verb can need. Without arguments it lists the
// verbs.
#include "command/output/report.h"
#include "command/verbs/run_verb.h"
#include "command/verbs/verb_help.h"

#include <string>
#include <vector>

int main(int argc, char** argv) {
    using namespace piolo;
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (!words.empty()) return command::runVerb(words);
    const Done said = command::say(command::verbLines() + command::verbTable());
    return said ? command::exitDone : command::report(said.fault());
}
