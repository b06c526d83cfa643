// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/keys/key_press_watch.h"

#include <doctest/doctest.h>

using piolo::practice::KeyPressWatch;

TEST_CASE("a held key counts once, however the window system reports it") {
    KeyPressWatch watch;
    CHECK(watch.pressed(32, 1000));
    SUBCASE("as presses") { CHECK_FALSE(watch.pressed(32, 1300)); }
    SUBCASE("as releases and presses at the same moment") {
        for (const int moment : {1500, 1530, 1560}) {
            watch.released(32, moment);
            CHECK_FALSE(watch.pressed(32, moment));
        }
        watch.released(32, 1600);
        CHECK(watch.pressed(32, 1900));
    }
}

TEST_CASE("a bouncing pedal counts once, two presses count twice") {
    KeyPressWatch watch;
    CHECK(watch.pressed(7, 1000));
    watch.released(7, 1004);
    CHECK_FALSE(watch.pressed(7, 1011));
    watch.released(7, 1120);
    CHECK(watch.pressed(7, 1200));
}

TEST_CASE("one key's bounce does not swallow another key") {
    KeyPressWatch watch;
    CHECK(watch.pressed(7, 1000));
    watch.released(7, 1004);
    CHECK(watch.pressed(8, 1010));
}
