// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/rest_watch.h"

#include <doctest/doctest.h>

using piolo::practice::RestWatch;

namespace {

constexpr std::int64_t minute = std::int64_t{60} * 1'000'000'000;

}

TEST_CASE("short stops do not begin a new stretch, a rest does") {
    RestWatch watch;
    watch.playing(true, 0);
    watch.playing(false, 20 * minute);
    watch.playing(true, 22 * minute);
    CHECK_FALSE(watch.due(26 * minute));
    CHECK(watch.due(27 * minute));
    watch.playing(false, 27 * minute);
    CHECK(watch.due(28 * minute));
    CHECK_FALSE(watch.due(32 * minute));
    watch.playing(true, 33 * minute);
    CHECK_FALSE(watch.due(40 * minute));
    CHECK(watch.due(58 * minute));
}

TEST_CASE("after a reminder was read, there is none before the next stretch is over") {
    RestWatch watch;
    watch.playing(true, 0);
    CHECK(watch.due(25 * minute));
    watch.dismiss(25 * minute);
    CHECK_FALSE(watch.due(49 * minute));
    CHECK(watch.due(50 * minute));
}
