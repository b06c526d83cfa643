// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_walk.h"

#include <doctest/doctest.h>

using namespace piolo;
using enum Direction;
using Way = std::vector<WalkStep>;

TEST_CASE("a path without range is only its tonic, on the way up") {
    CHECK(walkOf(ScalePattern::inOrder, {0, 0}) == Way{{0, up}});
    CHECK(walkOf(ScalePattern::turnsOfFour, {0, 0}) == Way{{0, up}});
}

TEST_CASE("a pattern is played if it just fits, otherwise the notes in order") {
    CHECK(walkOf(ScalePattern::thirds, {-1, 1}) ==
          Way{{0, up}, {1, up}, {1, down}, {-1, down}, {-1, up}, {0, up}});
}

TEST_CASE(
    "the note at which a path in order turns is the note that was reached, even if it is played twice") {
    Way way = walkOf(ScalePattern::inOrder, {0, 1});
    CHECK(endOnBeat(way, 3, ScalePattern::inOrder, 0).topTwice);
    CHECK(way == Way{{0, up}, {1, up}, {1, up}, {0, down}});
}

TEST_CASE("a last tonic that is played twice is the same note again") {
    Way way = walkOf(ScalePattern::thirds, {0, 2});
    CHECK(endOnBeat(way, 2, ScalePattern::thirds, 0).tonicTwice);
    CHECK(way == Way{{0, up}, {2, up}, {2, down}, {0, down}, {0, down}});
}

TEST_CASE("a turn uses the notes of the way up: it leads back to the tonic") {
    Way below{{0, up}};
    CHECK(endOnBeat(below, 1, ScalePattern::inOrder, -9) == ScaleEnding{});
    CHECK(below == Way{{0, up}});
    Way way = walkOf(ScalePattern::inOrder, {0, 1});
    CHECK(endOnBeat(way, 6, ScalePattern::inOrder, -2).turn == 4);
    CHECK(way == Way{{0, up}, {1, up}, {0, down}, {-1, up}, {-2, up}, {-1, up}, {0, up}});
    Way above = walkOf(ScalePattern::inOrder, {0, 1});
    CHECK(endOnBeat(above, 6, ScalePattern::inOrder, -1).turn == -4);
    CHECK(above == Way{{0, up}, {1, up}, {0, down}, {1, up}, {2, up}, {1, up}, {0, up}});
}
