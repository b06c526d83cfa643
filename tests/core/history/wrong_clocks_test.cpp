// SPDX-License-Identifier: GPL-3.0-or-later
// Dates that a wrong clock gave, and how they are put right.
#include "core/history/wrong_clocks.h"

#include "../scribe.h"

#include <doctest/doctest.h>

#include <array>

using namespace piolo;
using namespace piolo::testing;

namespace {

/// Two runs on 1 March 2026, then three in 2126 and one on 2 March.
struct Wrong : Scribe {
    Wrong() {
        clean(2);
        turnTo("2126-02-27");
        clean(3);
        turnTo("2026-03-02");
        clean();
    }
    Id say(const char* from, const char* to, std::uint64_t until, std::int32_t days) {
        return add(ClockFact{device, day(from), day(to), until, days});
    }
    [[nodiscard]] std::vector<std::string> dates() const {
        std::vector<std::string> dates;
        for (const Entry& entry : record().entries) dates.push_back(entry.at.date().text());
        return dates;
    }
};

const std::int32_t century =
    static_cast<std::int32_t>(day("2126-02-27").daysSince1970() - day("2026-03-01").daysSince1970());

using Dates = std::vector<std::string>;

} // namespace

TEST_CASE("what is dated in the future is found by device, with the dates and the last number") {
    const Wrong wrong;
    CHECK(wrong.notebook().datedAfter(day("2026-03-03")) ==
          std::vector<DatedAhead>{{"stand", day("2126-02-27"), day("2126-02-27"), 6, 3}});
    CHECK(wrong.notebook().datedAfter(day("2126-02-27")).empty());
}

TEST_CASE("a clock fact moves the dates it names, and nothing else") {
    Wrong wrong;
    const Dates before = wrong.dates();
    wrong.say("2126-02-27", "2126-02-27", 6, -century);
    CHECK(wrong.dates() ==
          Dates{"2026-03-01", "2026-03-01", "2026-03-01", "2026-03-01", "2026-03-01", "2026-03-02"});
    CHECK(wrong.notebook().datedAfter(day("2026-03-03")).empty());
    // The streak of five on one day is one now: the sixth run is at the next tempo.
    CHECK(wrong.record().entries[4].fullStreak);
    wrong.say("2126-02-27", "2126-02-27", 6, 0);
    CHECK(wrong.dates() == before);
}

TEST_CASE("of another device, of a later number or of other dates, it moves nothing") {
    for (const int which : {0, 1, 2, 3}) {
        Wrong wrong;
        const Dates before = wrong.dates();
        if (which == 1) wrong.device = "pit";
        wrong.say(which == 2 ? "2126-02-28" : "2126-01-01", which == 3 ? "2126-02-26" : "2126-03-01",
                  which == 0 ? 3 : 6, -7);
        CHECK(wrong.dates() == before);
    }
}

TEST_CASE("of two clock facts on the same dates, the last one in the order counts, however they arrive") {
    Wrong wrong;
    wrong.say("2126-02-27", "2126-02-27", 6, -7);
    wrong.say("2126-02-27", "2126-02-27", 6, -8);
    const Dates after = wrong.dates();
    CHECK(after[2] == "2126-02-19");
    std::swap(wrong.facts[wrong.facts.size() - 1], wrong.facts[wrong.facts.size() - 2]);
    CHECK(wrong.dates() == after);
    std::rotate(wrong.facts.begin(), wrong.facts.end() - 2, wrong.facts.end());
    CHECK(wrong.dates() == after);
}

TEST_CASE("a date that would leave the calendar stays") {
    Wrong wrong;
    wrong.say("2126-02-27", "2126-02-27", 6, ClockFact::dayRange.most);
    CHECK(wrong.dates()[2] == "2126-02-27");
    wrong.say("2126-02-27", "2126-02-27", 6, static_cast<std::int32_t>(ClockFact::dayRange.least));
    CHECK(wrong.dates()[2] == "2126-02-27");
}

TEST_CASE("a clock fact that arrives while the notebook is read moves days, openings and run-throughs") {
    Wrong wrong;
    const Id piece{5, 5};
    wrong.turnTo("2126-02-27");
    wrong.add(RunThroughFact{piece, {}, 1000, true, {}});
    Notebook notebook = wrong.notebook();
    CHECK(notebook.day(day("2126-02-27"), {}).runs == 3);
    CHECK(notebook.datedAfter(day("2026-03-03")).front().count == 4);
    const std::size_t known = wrong.facts.size();
    wrong.say("2126-02-27", "2126-02-27", 100, -century);
    notebook.add(wrong.facts[known]);
    CHECK(notebook.day(day("2126-02-27"), {}).runs == 0);
    CHECK(notebook.day(day("2026-03-01"), {}).runs == 5);
    CHECK(notebook.runThroughs(piece).front().at.date() == day("2026-03-01"));
    CHECK(notebook.datedAfter(day("2026-03-03")).empty());
}

TEST_CASE("dates far apart are of two wrong clocks") {
    AheadFacts ahead;
    Fact fact;
    std::uint64_t seq = 0;
    for (const char* date : {"2040-05-01", "2126-01-01", "2040-06-29", "2126-01-02"}) {
        fact.device = "stand";
        fact.seq = ++seq;
        fact.at = {day(date).daysSince1970() * 86'400'000, 0};
        ahead.add(fact);
    }
    fact.device = "pit";
    fact.seq = 9;
    ahead.add(fact);
    CHECK(std::move(ahead).groups() ==
          std::vector<DatedAhead>{{"pit", day("2126-01-02"), day("2126-01-02"), 9, 1},
                                  {"stand", day("2040-05-01"), day("2040-06-29"), 3, 2},
                                  {"stand", day("2126-01-01"), day("2126-01-02"), 4, 2}});
}

TEST_CASE("of a device, only the newest hundred clock facts count, in whatever order they arrive") {
    Wrong wrong;
    wrong.say("2126-02-27", "2126-02-27", 6, -7);
    for (std::size_t more = 1; more < WrongClocks::mostOfADevice; ++more)
        wrong.say("2001-01-01", "2001-01-01", 6, 1);
    CHECK(wrong.dates()[2] == "2126-02-20");
    wrong.say("2001-01-01", "2001-01-01", 6, 1);
    CHECK(wrong.dates()[2] == "2126-02-27");
    std::reverse(wrong.facts.begin(), wrong.facts.end());
    CHECK(wrong.dates()[2] == "2126-02-27");
}
