// SPDX-License-Identifier: GPL-3.0-or-later
// The orders of parts are common practice.
#include "core/rule/build_up.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

Music eightBarsFrom(std::int32_t firstBar) {
    Music music;
    music.firstBar = firstBar;
    music.bars = 8;
    music.pickup = {1, 8};
    music.landing = false;
    return music;
}

} // namespace

TEST_CASE("last bar first: every part ends where the passage ends, and each has one more bar in front") {
    const auto parts = lastBarFirst(eightBarsFrom(17));
    REQUIRE(parts.size() == 8);
    CHECK(parts.front() == BuildUpPart{24, 1});
    CHECK(parts.back() == BuildUpPart{17, 8});
    for (std::size_t i = 0; i < parts.size(); ++i) {
        CHECK(parts[i].bars == static_cast<std::int32_t>(i) + 1);
        CHECK(parts[i].firstBar + parts[i].bars == 25);
    }
}

TEST_CASE("overlapping parts: each begins with the downbeat on which the previous one lands") {
    const Music whole = eightBarsFrom(17);
    CHECK(overlappingParts(whole, 3) == std::vector<BuildUpPart>{{17, 3}, {20, 3}, {23, 2}});
    for (std::int32_t barsEach = 1; barsEach <= 9; ++barsEach) {
        std::int32_t next = 17;
        for (const BuildUpPart& part : overlappingParts(whole, barsEach)) {
            CHECK(part.firstBar == next);
            CHECK(part.bars <= barsEach);
            next += part.bars;
            CHECK(musicOf(part, whole).landing == (next < 25));
        }
        CHECK(next == 25);
    }
}

TEST_CASE("parts of zero bars become parts of one bar, and an open-ended passage has no parts") {
    CHECK(overlappingParts(eightBarsFrom(1), 0) == overlappingParts(eightBarsFrom(1), 1));
    Music open;
    open.bars = 0;
    CHECK(overlappingParts(open, 2).empty());
    CHECK(lastBarFirst(open).empty());
}

TEST_CASE("only a part that starts at the first bar has the pick-up; everything else is the passage's own") {
    const Music whole = eightBarsFrom(17);
    CHECK(musicOf({17, 2}, whole).pickup == Fraction{1, 8});
    CHECK(musicOf({18, 2}, whole).pickup.isZero());
    CHECK(musicOf({17, 8}, whole) == whole);
}

TEST_CASE("in context a passage has two bars more on either side, as far as the piece reaches") {
    const Music whole = eightBarsFrom(17);
    CHECK(inContext(whole, 0).firstBar == 15);
    CHECK(inContext(whole, 0).bars == 12);
    CHECK(inContext(whole, 0).pickup.isZero());
    CHECK(inContext(whole, 24).bars == 10);
    CHECK(inContext(whole, 25).bars == 11);
    CHECK(inContext(whole, 20).bars == 12); // a piece that ends inside its passage is ignored
    CHECK(inContext(eightBarsFrom(2), 0).firstBar == 1);
    CHECK(inContext(eightBarsFrom(1), 0).bars == 10);
    CHECK(inContext(eightBarsFrom(1), 0).pickup == Fraction{1, 8});
    CHECK(inContext(eightBarsFrom(0), 0).firstBar == 0);
    Music open;
    open.bars = 0;
    CHECK(inContext(open, 0) == open);
    Music longest = eightBarsFrom(1);
    longest.bars = Music::mostBars;
    CHECK(inContext(longest, 0).bars == Music::mostBars);
}
