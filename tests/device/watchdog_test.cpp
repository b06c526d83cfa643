// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/watchdog.h"

#include <doctest/doctest.h>

using namespace piolo::device;

namespace {
constexpr std::int64_t milli = 1'000'000;
}

TEST_CASE("quiet time grows while the sign stays the same and ends when it changes") {
    Watchdog vigil;
    CHECK(vigil.look(0, 1) == 0);
    CHECK(vigil.look(100 * milli, 1) == 100 * milli);
    CHECK(vigil.look(200 * milli, 1) == 200 * milli);
    CHECK(vigil.look(300 * milli, 2) == 0);
    CHECK(vigil.look(350 * milli, 2) == 50 * milli);
}

TEST_CASE("time during which nobody looked does not count") {
    Watchdog vigil;
    vigil.look(0, 1);
    CHECK(vigil.look(60'000 * milli, 1) == Watchdog::longestStep);
}

TEST_CASE("a clock that steps back adds nothing") {
    Watchdog vigil;
    vigil.look(1000 * milli, 1);
    CHECK(vigil.look(0, 1) == 0);
}
