// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/telling.h"
#include "app/verbs/help.h"
#include "app/verbs/verb.h"
#include "app/window/window.h"
#include "app/window/window_arguments.h"

namespace {

using namespace piolo::app;

int sayAndEnd(std::string_view text) {
    const piolo::Done said = say(text);
    return said ? exitDone : tell(said.fault());
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (!words.empty() && isVerb(words.front())) return runVerb(words.front(), std::span(words).subspan(1));
    const auto read = readWindowWords(words);
    if (!read) return tell(read.fault());
    if (read->help) return sayAndEnd(helpOf(""));
    if (read->version) return sayAndEnd("piolo " PIOLO_VERSION "\n");
    return runWindow(argc, argv, read->options);
}
