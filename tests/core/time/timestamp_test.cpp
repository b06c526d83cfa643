// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/timestamp.h"

#include <doctest/doctest.h>

using namespace piolo;

TEST_CASE("days are those of the Gregorian calendar") {
    // POSIX.1-2017, 4.16 "Seconds Since the Epoch": day 0 is 1970-01-01. The others by GNU date.
    struct Row {
        const char* date;
        std::int64_t days;
    };
    for (const Row& row : {Row{"1970-01-01", 0}, Row{"1969-12-31", -1}, Row{"2000-02-29", 11'016},
                           Row{"2000-03-01", 11'017}, Row{"2026-03-01", 20'513}, Row{"1900-03-01", -25'508},
                           Row{"0001-01-01", -719'162}, Row{"9999-12-31", 2'932'896}}) {
        CAPTURE(row.date);
        const auto date = Date::parse(row.date);
        REQUIRE(date);
        CHECK(date->daysSince1970() == row.days);
        CHECK(Date::fromDaysSince1970(row.days).text() == row.date);
    }
}

TEST_CASE("every day follows the day before") {
    Date last = Date::fromDaysSince1970(-719'162);
    int wrong = 0;
    for (std::int64_t days = -719'161; days <= 2'932'896; ++days) {
        const Date date = Date::fromDaysSince1970(days);
        const bool next = last < date && (date.day == last.day + 1 || date.day == 1);
        wrong += next && date.daysSince1970() == days ? 0 : 1;
        last = date;
    }
    CHECK(wrong == 0);
    CHECK(last.text() == "9999-12-31");
    CHECK(Date::fromDaysSince1970(3'000'000) == last);
}

TEST_CASE("a day that is not in the calendar is refused") {
    for (const char* text :
         {"", "2026-02-29", "1900-02-29", "2026-13-01", "2026-00-01", "2026-04-31", "2026-01-00",
          "0000-01-01", "2026-1-01", "26-01-01", "2026/01/01", "2026-01-01 ", "-026-01-01"}) {
        CAPTURE(text);
        CHECK_FALSE(Date::parse(text));
    }
    CHECK(Date::parse("2024-02-29"));
}

TEST_CASE("a moment is read as specified in RFC 3339") {
    // RFC 3339, section 5.8: its examples, the first two and the last; each pair is the same moment.
    const auto first = Timestamp::parse("1985-04-12T23:20:50.52Z");
    REQUIRE(first);
    CHECK(first->utcMillis == 482'196'050'520);
    CHECK(first->text() == "1985-04-12T23:20:50.520+00:00");
    const auto second = Timestamp::parse("1996-12-19T16:39:57-08:00");
    REQUIRE(second);
    CHECK(second->utcMillis == Timestamp::parse("1996-12-20T00:39:57Z")->utcMillis);
    CHECK(second->offsetMinutes == -480);
    CHECK(second->date().text() == "1996-12-19");
    const auto third = Timestamp::parse("1937-01-01T12:00:27.87+00:20");
    REQUIRE(third);
    CHECK(third->text() == "1937-01-01T12:00:27.870+00:20");
}

TEST_CASE("a leap second is read as the last millisecond of its minute, and only where one can be") {
    // RFC 3339, section 5.8, third and fourth example: the same leap second in two zones.
    const auto utc = Timestamp::parse("1990-12-31T23:59:60Z");
    REQUIRE(utc);
    CHECK(utc->text() == "1990-12-31T23:59:59.999+00:00");
    const auto pacific = Timestamp::parse("1990-12-31T15:59:60-08:00");
    REQUIRE(pacific);
    CHECK(pacific->utcMillis == utc->utcMillis);
    CHECK_FALSE(Timestamp::parse("1990-12-31T23:58:60Z"));
    CHECK_FALSE(Timestamp::parse("1990-12-31T23:59:60-08:00"));
    CHECK_FALSE(Timestamp::parse("1990-12-31T23:59:61Z"));
}

TEST_CASE("a moment may have 0 to 9 decimals, truncated to milliseconds, and lower-case letters") {
    CHECK(Timestamp::parse("2026-03-01t18:04:05z")->text() == "2026-03-01T18:04:05.000+00:00");
    CHECK(Timestamp::parse("2026-03-01T18:04:05.1239+01:00")->text() == "2026-03-01T18:04:05.123+01:00");
    CHECK(Timestamp::parse("2026-03-01T18:04:05.999999999+01:00")->text() == "2026-03-01T18:04:05.999+01:00");
    CHECK(Timestamp::parse("2026-03-01T18:04:05.1-00:00")->text() == "2026-03-01T18:04:05.100+00:00");
}

TEST_CASE("anything else is not a moment") {
    for (const char* text : {"",
                             "2026-03-01",
                             "2026-03-01T18:04:05",
                             "2026-03-01 18:04:05Z",
                             "2026-03-01T18:04Z",
                             "2026-03-01T24:00:00Z",
                             "2026-03-01T18:60:00Z",
                             "2026-03-01T18:04:05.Z",
                             "2026-03-01T18:04:05,1Z",
                             "2026-03-01T18:04:05.1234567890Z",
                             "2026-03-01T18:04:05+1:00",
                             "2026-03-01T18:04:05+0100",
                             "2026-03-01T18:04:05+24:00",
                             "2026-03-01T18:04:05+01:60",
                             "2026-03-01T18:04:05+01",
                             "2026-02-30T18:04:05Z",
                             "2026-03-01T18:04:05Z ",
                             " 2026-03-01T18:04:05Z",
                             "2026-03-01T1a:04:05Z",
                             "0000-01-01T00:00:00Z"}) {
        CAPTURE(text);
        CHECK_FALSE(Timestamp::parse(text));
    }
}

TEST_CASE("the date of a moment is the local one, on both sides of midnight") {
    CHECK(Timestamp::parse("2026-03-01T00:30:00+02:00")->date().text() == "2026-03-01");
    CHECK(Timestamp::parse("2026-02-28T22:30:00Z")->date().text() == "2026-02-28");
    CHECK(Timestamp{-1, 0}.date().text() == "1969-12-31");
    CHECK(Timestamp{-1, 0}.text() == "1969-12-31T23:59:59.999+00:00");
    CHECK(Timestamp{0, -1439}.text() == "1969-12-31T00:01:00.000-23:59");
}
