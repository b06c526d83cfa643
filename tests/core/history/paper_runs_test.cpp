// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/paper_runs.h"

#include "../scribe.h"
#include "../seed.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

PaperRung rung(std::int32_t bpm, int clean, int missed) { return {Tempo::bpm(bpm), clean, missed}; }

/// The notebook's record after the runs were added.
PassageRecord kept(Scribe scribe, const std::vector<RunFact>& runs) {
    for (const RunFact& run : runs) scribe.add(run);
    return scribe.record();
}

} // namespace

TEST_CASE("rungs are recorded as they are given, on each the misses before the clean runs") {
    const std::vector sheet{rung(80, 1, 1), rung(82, 0, 0), rung(84, 2, 0)};
    const auto runs = enteredRuns({7, 7}, sheet);
    REQUIRE(runs.size() == 4);
    CHECK(runs[0].mark == Mark::missed);
    CHECK(runs[1].mark == Mark::clean);
    CHECK(runs[1].tempo == Tempo::bpm(80));
    CHECK(runs[3].tempo == Tempo::bpm(84));
    for (const RunFact& run : runs) {
        CHECK(run.entered);
        CHECK(run.millis == 0);
        CHECK(run.passage == Id{7, 7});
    }
}

TEST_CASE("a rung with all circles ticked is a full streak, whatever was missed on it before") {
    const Scribe scribe;
    const std::vector sheet{rung(80, 5, 2), rung(82, 5, 1), rung(84, 3, 0)};
    const PassageRecord record = kept(scribe, enteredRuns(scribe.passage, sheet));
    CHECK(record.best == Tempo::bpm(82));
    CHECK(record.standing == at(84, 3));
}

TEST_CASE("a rung on which only misses are left drops from it") {
    const Scribe scribe;
    const std::vector sheet{rung(80, 5, 0), rung(82, 0, 2)};
    CHECK(kept(scribe, enteredRuns(scribe.passage, sheet)).standing == at(78, 0));
}

TEST_CASE("an entered streak continues that day's runs, and starts at 0 on another day") {
    Scribe scribe;
    scribe.turnTo("2026-03-02");
    scribe.clean(3);
    const std::vector sheet{rung(80, 2, 0)};
    const auto runs = enteredRuns(scribe.passage, sheet);
    CHECK(outcomeOf(scribe.record(), day("2026-03-02"), runs).standing == at(82, 0));
    CHECK(outcomeOf(scribe.record(), day("2026-03-03"), runs).standing == at(80, 2));
}

TEST_CASE("what is shown before is what the notebook says afterwards, for sheets filled in at random") {
    const std::uint64_t seeded = seed();
    CAPTURE(seeded);
    Dice dice(seeded);
    for (int round = 0; round < 300; ++round) {
        Scribe scribe;
        Tempi tempi = usualTempi();
        tempi.rule.gentle = roll(dice, 2) == 0;
        tempi.rule.cleanRuns = 1 + roll(dice, 6);
        scribe.edit(tempi);
        scribe.turnTo("2026-03-02");
        for (int run = roll(dice, 12); run > 0; --run)
            scribe.here(roll(dice, 3) == 0 ? Mark::missed : Mark::clean);
        const bool sameDay = roll(dice, 2) == 0;
        if (!sameDay) scribe.turnTo("2026-03-05");
        std::vector<PaperRung> sheet;
        for (std::int32_t bpm = 76 + roll(dice, 10); bpm <= 96; bpm += 2)
            sheet.push_back(rung(bpm, roll(dice, tempi.rule.cleanRuns + 1), roll(dice, 3)));
        const auto runs = enteredRuns(scribe.passage, sheet);
        const PassageRecord before = scribe.record();
        // Without runs, the passage has no day yet.
        const Date played = before.lastDay && sameDay ? *before.lastDay : day("2026-03-05");
        if (!before.lastDay) scribe.turnTo("2026-03-05");
        const PaperOutcome reported = outcomeOf(before, played, runs);
        const PassageRecord after = kept(scribe, runs);
        CHECK(reported.standing == after.standing);
        CHECK(reported.best == after.best);
        CHECK(before.secures.size() + static_cast<std::size_t>(reported.secures) == after.secures.size());
    }
}
