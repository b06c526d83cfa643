// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/bar_parts.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::practice;

namespace {

Music barsOf(int bars) {
    Music music;
    music.bars = bars;
    return music;
}

} // namespace

TEST_CASE("passages of one bar, of too many and open-ended ones have no parts") {
    const auto parts = [](int bars) { return partsThatOverlap(barsOf(bars)).size(); };
    CHECK(parts(0) == 0);
    CHECK(parts(1) == 0);
    CHECK(parts(2) == 2);
    CHECK(parts(5) == 3);
    CHECK(parts(9) == 3);
    CHECK(parts(32) == 8);
    CHECK(parts(33) == 0);
}

TEST_CASE("a passage is built up from its last bar to all but its first") {
    const auto parts = partsFromTheEnd(barsOf(4));
    CHECK(parts == std::vector<BuildUpPart>{{4, 1}, {3, 2}, {2, 3}});
    CHECK(partsFromTheEnd(barsOf(1)).empty());
    CHECK(partsFromTheEnd(barsOf(9)).empty());
    CHECK(partsFromTheEnd(barsOf(0)).empty());
}

TEST_CASE("some bars of a scale are a passage linked to it, and in no cell of the grid") {
    Passage whole;
    whole.id = *Id::parse("0123456789abcdef0123456789abcdef");
    whole.music = barsOf(4);
    whole.scale = Scale{};
    const Passage part = passageOfBars(whole, {2, 1}, "E♭ major: bar 2");
    CHECK(part.id.isNone());
    CHECK(part.title.name == "E♭ major: bar 2");
    CHECK(part.title.origin == whole.id);
    CHECK(part.music.firstBar == 2);
    CHECK(part.music.bars == 1);
    CHECK_FALSE(part.scale.has_value());
}
