// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/note.h"
#include "core/time/fraction_sum.h"

#include <doctest/doctest.h>
#include <limits>

using namespace piolo;

TEST_CASE("fractions are added and subtracted exactly, in lowest terms") {
    CHECK(sum({1, 6}, {1, 3}) == Fraction{1, 2});
    CHECK(sum({0, 1}, {2, 8}) == Fraction{1, 4});
    CHECK(difference({1, 2}, {1, 6}) == Fraction{1, 3});
    CHECK(difference({1, 2}, {2, 4}) == Fraction{0, 1});
}

TEST_CASE("there is no result if it is negative or does not fit") {
    constexpr std::int32_t most = std::numeric_limits<std::int32_t>::max();
    CHECK(!difference({1, 3}, {1, 2}));
    CHECK(!sum({most, 1}, {1, 1}));
    CHECK(!sum({1, most}, {1, most - 1}));
    CHECK(!reducedFraction(-1, 2));
    CHECK(!reducedFraction(1, 0));
    CHECK(sum({most, 2}, {most, 2}) == Fraction{most, 1});
}

TEST_CASE("fractions are ordered by value") {
    CHECK(order({2, 4}, {1, 2}) == 0);
    CHECK(order({1, 3}, {1, 2}) < 0);
    CHECK(order({3, 2}, {1, 1}) > 0);
}

TEST_CASE("middle C is MIDI note 60") {
    // General MIDI; A4 = 69 is 440 Hz.
    static_assert(midiNumber({'C', 0, 4}) == 60);
    static_assert(midiNumber({'A', 0, 4}) == 69);
    static_assert(midiNumber({'B', 1, 3}) == 60);
    static_assert(midiNumber({'C', -1, 4}) == 59);
    CHECK(midiNumber({'G', 0, 9}) == 127);
}
