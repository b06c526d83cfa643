// SPDX-License-Identifier: GPL-3.0-or-later
// The usual beats and groups, and the names of subdivisions, are common practice.
#include "core/time/meter.h"
#include "core/time/subdivision.h"

#include <doctest/doctest.h>

using namespace piolo;

TEST_CASE("the default meter is 4/4 in quarters") {
    const Meter meter;
    CHECK(meter == *Meter::make(4, 4, BeatUnit::quarter));
    CHECK(meter.beatsPerBar() == 4);
    CHECK(meter.groupStarts() == 1);
    CHECK(meter.groupsText().empty());
}

TEST_CASE("a meter without a beat uses the usual one: dotted quarters in 6/8, 9/8 and 12/8, otherwise its "
          "own note") {
    struct Row {
        const char* meter;
        BeatUnit beat;
        int beats;
    };
    for (const Row& row : {Row{"4/4", BeatUnit::quarter, 4}, Row{"3/4", BeatUnit::quarter, 3},
                           Row{"2/2", BeatUnit::half, 2}, Row{"6/8", BeatUnit::dottedQuarter, 2},
                           Row{"9/8", BeatUnit::dottedQuarter, 3}, Row{"12/8", BeatUnit::dottedQuarter, 4},
                           Row{"7/8", BeatUnit::eighth, 7}, Row{"3/8", BeatUnit::eighth, 3}}) {
        CAPTURE(row.meter);
        const auto meter = Meter::parse(row.meter, "", "");
        REQUIRE(meter.ok());
        CHECK(meter->beat() == row.beat);
        CHECK(meter->beatsPerBar() == row.beats);
        CHECK(meter->text() == row.meter);
    }
}

TEST_CASE("meters counted in eighths have their usual groups") {
    struct Row {
        const char* meter;
        const char* groups;
        std::uint32_t starts;
    };
    for (const Row& row :
         {Row{"5/8", "3+2", 0b01001}, Row{"7/8", "2+2+3", 0b0010101}, Row{"8/8", "3+3+2", 0b01001001},
          Row{"6/8", "3+3", 0b001001}, Row{"9/8", "3+3+3", 0b001001001},
          Row{"12/8", "3+3+3+3", 0b001001001001}, Row{"4/8", "", 1}}) {
        CAPTURE(row.meter);
        const auto meter = Meter::parse(row.meter, "1/8", "");
        REQUIRE(meter.ok());
        CHECK(meter->groupsText() == row.groups);
        CHECK(meter->groupStarts() == row.starts);
    }
}

TEST_CASE("explicit groups replace the usual ones") {
    const auto meter = Meter::parse("7/8", "1/8", "3+2+2");
    REQUIRE(meter.ok());
    CHECK(meter->groups() == std::vector<int>{3, 2, 2});
    CHECK(meter->groupStarts() == 0b0101001);
    CHECK(Meter::parse("4/4", "1/2", "2+2")->groupStarts() == 0b11);
    CHECK(Meter::parse("2/4", "1/8", "1+1")->groupStarts() == 0b0101);
}

TEST_CASE("a beat that does not divide the meter is a fault that names both") {
    const auto meter = Meter::parse("4/4", "3/8", "");
    REQUIRE_FALSE(meter.ok());
    CHECK(meter.fault() == Fault{FaultNumber::beatDoesNotDivide, {}, {"3/8", "4/4"}});
    CHECK(Meter::parse("7/8", "1/4", "").fault().number == FaultNumber::beatDoesNotDivide);
    CHECK(Meter::parse("3/4", "3/4", "")->beatsPerBar() == 1);
}

TEST_CASE("a meter outside 1 to 32 over 1, 2, 4, 8 or 16, or of more than 32 beats, is refused") {
    for (const char* text : {"0/4", "33/4", "4/3", "4/0", "4/32", "4", "", "-4/4", "four/4", "4/4 "}) {
        CAPTURE(text);
        CHECK(Meter::parse(text, "", "").fault() == Fault{FaultNumber::badMeter, {}, {text}});
    }
    CHECK(Meter::parse("32/4", "1/8", "").fault().number == FaultNumber::badMeter);
    CHECK(Meter::parse("32/8", "1/8", "")->beatsPerBar() == 32);
}

TEST_CASE("a beat unit is one of five note values") {
    for (const char* text : {"1/2", "1/4", "3/8", "1/8", "3/4"}) {
        CAPTURE(text);
        const auto unit = parseBeatUnit(text);
        REQUIRE(unit.ok());
        CHECK(fractionOf(*unit).text() == text);
    }
    for (const char* text : {"", "1/16", "2/8", "1/1", "quarter"})
        CHECK(parseBeatUnit(text).fault() == Fault{FaultNumber::badBeat, {}, {text}});
    CHECK(Meter::parse("4/16", "", "").fault() == Fault{FaultNumber::badBeat, {}, {"1/16"}});
}

TEST_CASE("groups must fill the bar and begin on beats") {
    for (const char* groups : {"2+2", "2+2+4", "0+4+3", "2++5", "+7", "7+", "2-5", "a"}) {
        CAPTURE(groups);
        CHECK(Meter::parse("7/8", "1/8", groups).fault() ==
              Fault{FaultNumber::badGroups, {}, {groups, "7/8"}});
    }
    CHECK(Meter::parse("6/8", "3/8", "2+4").fault().number == FaultNumber::badGroups);
    CHECK(Meter::make(4, 4, BeatUnit::quarter, {5, -1}).fault().number == FaultNumber::badGroups);
}

TEST_CASE("each beat unit has its own names for its subdivisions") {
    using enum SubdivisionName;
    struct Row {
        BeatUnit beat;
        std::vector<SubdivisionName> names;
    };
    const std::vector<Row> rows{
        {BeatUnit::quarter,
         {quarters, eighths, triplets, sixteenths, quintuplets, sextuplets, septuplets, thirtySeconds}},
        {BeatUnit::half,
         {halves, quarters, quarterTriplets, eighths, other, eighthTriplets, other, sixteenths}},
        {BeatUnit::eighth,
         {eighths, sixteenths, sixteenthTriplets, thirtySeconds, other, other, other, other}},
        {BeatUnit::dottedQuarter,
         {dottedQuarters, duplets, eighths, quadruplets, other, sixteenths, other, other}},
        {BeatUnit::dottedHalf, {dottedHalves, dottedQuarters, quarters, other, other, eighths, other, other}},
    };
    for (const Row& row : rows)
        for (int pulses = 1; pulses <= mostPulsesToTheBeat; ++pulses) {
            CAPTURE(pulses);
            CHECK(nameOf(row.beat, pulses) == row.names[static_cast<std::size_t>(pulses - 1)]);
        }
    CHECK(nameOf(BeatUnit::quarter, 0) == other);
    CHECK(nameOf(BeatUnit::quarter, 9) == other);
}
