// SPDX-License-Identifier: GPL-3.0-or-later
// A verb that exists only in a test: this file and one line in the table are all it takes.
#include "command/options/option_reader.h"
#include "command/output/report.h"
#include "command/verbs/verb_list.h"

namespace piolo::command::whistle_verb {
namespace {

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const auto times = in.whole("--times", {1, 3});
    if (in.fault()) return *in.fault();
    const Done said = say("whistled " + std::to_string(times) + '\n');
    if (!said) return said.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {"whistle",
            "whistles",
            "piolo whistle --times N",
            "",
            "piolo whistle --times 2",
            {{"--times", "N", "2", "how many times"}},
            0,
            run};
}

} // namespace piolo::command::whistle_verb
