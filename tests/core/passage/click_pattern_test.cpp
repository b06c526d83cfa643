// SPDX-License-Identifier: GPL-3.0-or-later
#include "../scribe.h"
#include "core/passage/click_pattern.h"

#include <doctest/doctest.h>

using namespace piolo;

TEST_CASE("swing is from 1:1 to 3:1, each part at most 99") {
    for (const char* good : {"1:1", "2:1", "3:1", "3:2", "5:3", "29:21", "99:33", "99:99"}) {
        CAPTURE(good);
        const auto swing = parseSwing(good);
        REQUIRE(swing);
        CHECK(swingText(*swing) == good);
    }
    for (const char* bad : {"", "2", "2/1", ":", "2:", ":1", "1:2", "0:0", "1:0", "31:10", "100:50", "2:1:1",
                            "-2:1", "2.5:1", " 2:1"}) {
        CAPTURE(bad);
        CHECK_FALSE(parseSwing(bad));
    }
}

TEST_CASE("swing affects a beat that is divided into pairs of its notes, and no other") {
    ClickPattern eighths;
    eighths.swing = {4, 2};
    ClickPattern sixteenths = eighths;
    sixteenths.swung = SwungNotes::sixteenths;
    struct Row {
        BeatUnit beat;
        int pulses;
        bool eighths;
        bool sixteenths;
    };
    const Row rows[] = {
        {BeatUnit::quarter, 2, true, false},       {BeatUnit::quarter, 4, false, true},
        {BeatUnit::quarter, 1, false, false},      {BeatUnit::quarter, 3, false, false},
        {BeatUnit::quarter, 6, false, false},      {BeatUnit::half, 4, true, false},
        {BeatUnit::half, 8, false, true},          {BeatUnit::eighth, 2, false, true},
        {BeatUnit::eighth, 1, false, false},       {BeatUnit::dottedQuarter, 3, false, false},
        {BeatUnit::dottedQuarter, 6, false, true}, {BeatUnit::dottedHalf, 6, true, false},
        {BeatUnit::dottedHalf, 8, false, false},
    };
    for (const auto& [beat, pulses, first, second] : rows) {
        CAPTURE(static_cast<int>(beat));
        CAPTURE(pulses);
        CHECK(swingOf(eighths, beat, pulses) == (first ? Fraction{2, 1} : Fraction{1, 1}));
        CHECK(swingOf(sixteenths, beat, pulses) == (second ? Fraction{2, 1} : Fraction{1, 1}));
    }
}

TEST_CASE("off-beats are in the middle of a beat, or at the last third of one that divides in three") {
    ClickPattern click;
    CHECK(pulsesToTheBeat(click, BeatUnit::quarter, 7) == 7);
    click.on = ClickOn::offbeats;
    CHECK(pulsesToTheBeat(click, BeatUnit::quarter, 7) == 2);
    CHECK(pulsesToTheBeat(click, BeatUnit::half, 1) == 2);
    CHECK(pulsesToTheBeat(click, BeatUnit::dottedQuarter, 1) == 3);
    CHECK(pulsesToTheBeat(click, BeatUnit::dottedHalf, 6) == 3);
}

TEST_CASE("breath places are in the order of the part, no place twice, at most 16") {
    CHECK(areBreaths({}));
    CHECK(areBreaths({{-1, 1, 1}, {1, 3, 2}, {1, 4, 8}, {10'998, 32, 1}}));
    CHECK_FALSE(areBreaths({{1, 3, 2}, {1, 3, 1}}));
    CHECK_FALSE(areBreaths({{2, 1, 1}, {1, 4, 1}}));
    for (const BreathPlace bad : {BreathPlace{-2, 1, 1}, BreathPlace{10'999, 1, 1}, BreathPlace{1, 0, 1},
                                  BreathPlace{1, 33, 1}, BreathPlace{1, 1, 0}, BreathPlace{1, 1, 9}})
        CHECK_FALSE(areBreaths({bad}));
    std::vector<BreathPlace> many;
    for (std::int32_t bar = 1; bar <= 16; ++bar) many.push_back({bar, 1, 1});
    CHECK(areBreaths(many));
    many.push_back({17, 1, 1});
    CHECK_FALSE(areBreaths(many));
}

TEST_CASE("every name of a click setting is read back, and no other word") {
    for (const ClickOn on : {ClickOn::beats, ClickOn::downbeats, ClickOn::backbeats, ClickOn::offbeats})
        CHECK(clickOnNamed(nameOf(on)) == on);
    for (const Accent accent : {Accent::strong, Accent::group, Accent::plain, Accent::silent})
        CHECK(accentNamed(nameOf(accent)) == accent);
    for (const SwungNotes notes : {SwungNotes::eighths, SwungNotes::sixteenths})
        CHECK(swungNotesNamed(nameOf(notes)) == notes);
    for (const char* word : {"", "Beats", "beat", "loud"}) {
        CHECK_FALSE(clickOnNamed(word));
        CHECK_FALSE(accentNamed(word));
        CHECK_FALSE(swungNotesNamed(word));
    }
}

TEST_CASE("the newest click of a passage counts, and leaves tempo and streak alone") {
    piolo::testing::Scribe scribe;
    CHECK(scribe.record().passage.click == ClickPattern{});
    scribe.clean(3);
    ClickPattern click;
    click.on = ClickOn::backbeats;
    scribe.add(PassageFact{scribe.passage, {}, {}, {}, click});
    scribe.add(PassageFact{scribe.passage, Title{"Trio", {}}, {}, {}});
    CHECK(scribe.record().passage.click == click);
    CHECK(scribe.standing() == piolo::testing::at(80, 3));
    scribe.add(PassageFact{scribe.passage, {}, {}, {}, ClickPattern{}});
    CHECK(scribe.record().passage.click == ClickPattern{});
}
