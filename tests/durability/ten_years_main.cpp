// SPDX-License-Identifier: GPL-3.0-or-later
// piolo_ten_years OUT [--runs N] [--seed S]: writes a practice folder of ten years.
#include "ten_years.h"

#include <cstdio>
#include <cstdlib>
#include <cstring>

int main(int count, char** words) {
    piolo::test::TenYears years;
    bool understood = count >= 2 && count % 2 == 0;
    for (int i = 2; understood && i < count; i += 2) {
        if (std::strcmp(words[i], "--runs") == 0)
            years.runs = std::strtol(words[i + 1], nullptr, 10);
        else if (std::strcmp(words[i], "--seed") == 0)
            years.seed = std::strtoull(words[i + 1], nullptr, 10);
        else
            understood = false;
    }
    if (!understood) {
        std::fputs("usage: piolo_ten_years OUT [--runs N] [--seed S]\n", stderr);
        return 2;
    }
    if (!piolo::test::writeTenYears(words[1], years)) {
        std::fprintf(stderr, "%s cannot be written\n", words[1]);
        return 1;
    }
    std::printf("%ld runs, seed %llu\n", years.runs, static_cast<unsigned long long>(years.seed));
    return 0;
}
