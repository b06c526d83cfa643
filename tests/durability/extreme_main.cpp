// SPDX-License-Identifier: GPL-3.0-or-later
// piolo_extreme FOLDER SEED FACTS [day]: writes a practice folder of extreme but valid facts; `day`: all of
// one day.
#include "extreme_folder.h"

#include <cstdio>
#include <cstdlib>

int main(int count, char** words) {
    if (count < 4) {
        std::fputs("usage: piolo_extreme FOLDER SEED FACTS [day]\n", stderr);
        return 2;
    }
    const piolo::test::ExtremeFolder extreme{std::strtoull(words[2], nullptr, 10),
                                             std::strtoull(words[3], nullptr, 10), count > 4};
    return piolo::test::writeExtremeFolder(words[1], extreme) ? 0 : 1;
}
