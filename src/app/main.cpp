// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verb.h"
#include "app/window.h"

#include <string>
#include <vector>

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (!words.empty() && piolo::app::isVerb(words.front()))
        return piolo::app::runVerb(words.front(), std::span(words).subspan(1));
    return piolo::app::runWindow(argc, argv, {});
}
