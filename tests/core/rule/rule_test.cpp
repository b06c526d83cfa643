// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rule/day_opening.h"
#include "core/rule/rule.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

/// Drop 4, climb 2, five clean runs, floor 40, target 96.
Rule fourTwo() {
    Rule rule;
    rule.target = Tempo::bpm(96);
    return rule;
}
Rule inNotches() {
    Rule rule = fourTwo();
    rule.step = StepKind::notches;
    rule.drop = 2;
    rule.climb = 1;
    return rule;
}
Standing at(std::int32_t bpm, std::int32_t streak) { return {Tempo::bpm(bpm), streak}; }

static_assert(noexcept(afterClean({}, {})) && noexcept(afterMiss({},
                                                                 {})) && noexcept(handSet(Tempo::bpm(60))));
static_assert(noexcept(afterRun({}, Tempo::bpm(60), Mark::clean, {})) && noexcept(edited({}, {})));
static_assert(noexcept(stepUp(Tempo::bpm(60), StepKind::bpm, 1)) && noexcept(
    dayOpens(DayOpening::start, Tempo::bpm(60), nullptr, Tempo::bpm(60), {})));

} // namespace

TEST_CASE("a clean run adds 1 to the streak") {
    const Outcome outcome = afterClean(at(80, 2), fourTwo());
    CHECK(outcome.after == at(80, 3));
    CHECK_FALSE(outcome.fullStreak);
    CHECK_FALSE(outcome.climbed);
}

TEST_CASE("a full streak climbs and starts the streak at 0") {
    const Outcome outcome = afterClean(at(80, 4), fourTwo());
    CHECK(outcome.after == at(82, 0));
    CHECK(outcome.fullStreak);
    CHECK(outcome.climbed);
    CHECK_FALSE(outcome.secure);
}

TEST_CASE("a climb never passes the target") { CHECK(afterClean(at(95, 4), fourTwo()).after == at(96, 0)); }

TEST_CASE("a full streak at the target is a secure and starts the streak at 0") {
    const Outcome outcome = afterClean(at(96, 4), fourTwo());
    CHECK(outcome.after == at(96, 0));
    CHECK(outcome.fullStreak);
    CHECK(outcome.secure);
    CHECK_FALSE(outcome.climbed);
}

TEST_CASE("above the target a full streak is a secure and the tempo stays") {
    const Outcome outcome = afterClean(at(100, 4), fourTwo());
    CHECK(outcome.after == at(100, 0));
    CHECK(outcome.secure);
}

TEST_CASE("reaching the target is not yet a secure") { CHECK_FALSE(afterClean(at(94, 4), fourTwo()).secure); }

TEST_CASE("if one clean run is required, each clean run climbs") {
    Rule rule = fourTwo();
    rule.cleanRuns = 1;
    CHECK(afterClean(at(80, 0), rule).after == at(82, 0));
}

TEST_CASE("a streak longer than a shortened rule requires is full with the next clean run") {
    Rule rule = fourTwo();
    rule.cleanRuns = 3;
    CHECK(afterClean(at(80, 4), rule).after == at(82, 0));
}

TEST_CASE("a missed run ends the streak and drops the tempo") {
    const Outcome outcome = afterMiss(at(84, 4), fourTwo());
    CHECK(outcome.after == at(80, 0));
    CHECK(outcome.dropped);
    CHECK_FALSE(outcome.fullStreak);
}

TEST_CASE("a drop never passes the floor") { CHECK(afterMiss(at(42, 0), fourTwo()).after == at(40, 0)); }

TEST_CASE("a miss at the floor still ends the streak") {
    const Outcome outcome = afterMiss(at(40, 4), fourTwo());
    CHECK(outcome.after == at(40, 0));
    CHECK_FALSE(outcome.dropped);
}

TEST_CASE("a tempo already below the floor stays on a miss") {
    CHECK(afterMiss(at(30, 3), fourTwo()).after == at(30, 0));
}

TEST_CASE("from below the floor a full streak climbs by one climb") {
    CHECK(afterClean(at(30, 4), fourTwo()).after == at(32, 0));
}

TEST_CASE("a hand-set tempo sets the streak to 0") {
    CHECK(handSet(Tempo::bpm(72)) == at(72, 0));
    CHECK(handSet(Tempo::bpm(10)) == at(10, 0));
}

TEST_CASE("a run at another tempo first sets that tempo with streak 0, then counts") {
    CHECK(afterRun(at(80, 4), Tempo::bpm(90), Mark::clean, fourTwo()).after == at(90, 1));
    CHECK(afterRun(at(80, 4), Tempo::bpm(90), Mark::missed, fourTwo()).after == at(86, 0));
    CHECK(afterRun(at(80, 4), Tempo::bpm(80), Mark::clean, fourTwo()).after == at(82, 0));
}

TEST_CASE("a void run moves nothing, whatever its tempo") {
    const Outcome outcome = afterRun(at(80, 4), Tempo::bpm(90), Mark::voided, fourTwo());
    CHECK(outcome.after == at(80, 4));
    CHECK_FALSE((outcome.fullStreak || outcome.climbed || outcome.dropped || outcome.secure));
}

TEST_CASE("in notches the tempo climbs and drops on the metronome scale, then clamps") {
    CHECK(afterClean(at(61, 4), inNotches()).after == at(63, 0));
    CHECK(afterMiss(at(61, 4), inNotches()).after == at(58, 0));
    CHECK(afterClean(at(92, 4), inNotches()).after == at(96, 0));
    Rule rule = inNotches();
    rule.target = Tempo::bpm(95);
    CHECK(afterClean(at(92, 4), rule).after == at(95, 0));
    CHECK(afterMiss(at(42, 1), inNotches()).after == at(40, 0));
}

TEST_CASE("in BPM a step keeps the thousandths") {
    const Tempo tempo = *Tempo::fromThousandths(72'125);
    CHECK(stepUp(tempo, StepKind::bpm, 2).thousandths() == 74'125);
    CHECK(stepDown(tempo, StepKind::bpm, 4).thousandths() == 68'125);
}

TEST_CASE("no step leaves 10 to 400 BPM") {
    for (const StepKind kind : {StepKind::bpm, StepKind::notches}) {
        CHECK(stepUp(Tempo::bpm(399), kind, 100) == Tempo::bpm(400));
        CHECK(stepDown(Tempo::bpm(11), kind, 100) == Tempo::bpm(10));
    }
}

TEST_CASE("an edit clamps the tempo to floor and target, with streak 0 if that changes it") {
    CHECK(edited(at(100, 3), fourTwo()) == at(96, 0));
    CHECK(edited(at(38, 3), fourTwo()) == at(40, 0));
    CHECK(edited(at(96, 3), fourTwo()) == at(96, 3));
    CHECK(edited(at(40, 3), fourTwo()) == at(40, 3));
}

TEST_CASE("a day opens two rungs below the last full streak, rungs being climbs apart") {
    const Tempo full = Tempo::bpm(84);
    const Tempo start = Tempo::bpm(60);
    CHECK(dayOpens(DayOpening::twoRungsBelow, Tempo::bpm(90), &full, start, fourTwo()) == Tempo::bpm(80));
    CHECK(dayOpens(DayOpening::twoRungsBelow, Tempo::bpm(90), &full, start, inNotches()) == Tempo::bpm(76));
}

TEST_CASE("a day does not open below the start or above the target") {
    const Tempo low = Tempo::bpm(62);
    const Tempo high = Tempo::bpm(120);
    const Tempo start = Tempo::bpm(60);
    CHECK(dayOpens(DayOpening::twoRungsBelow, Tempo::bpm(70), &low, start, fourTwo()) == start);
    CHECK(dayOpens(DayOpening::twoRungsBelow, Tempo::bpm(120), &high, start, fourTwo()) == Tempo::bpm(96));
}

TEST_CASE("a day never opens above where the passage was left") {
    const Tempo full = Tempo::bpm(90);
    const Tempo start = Tempo::bpm(72);
    CHECK(dayOpens(DayOpening::twoRungsBelow, Tempo::bpm(84), &full, start, fourTwo()) == Tempo::bpm(84));
    CHECK(dayOpens(DayOpening::twoRungsBelow, Tempo::bpm(68), nullptr, start, fourTwo()) == Tempo::bpm(68));
    CHECK(dayOpens(DayOpening::start, Tempo::bpm(68), &full, start, fourTwo()) == Tempo::bpm(68));
}

TEST_CASE("without a full streak the day opens at the start") {
    CHECK(dayOpens(DayOpening::twoRungsBelow, Tempo::bpm(70), nullptr, Tempo::bpm(60), fourTwo()) ==
          Tempo::bpm(60));
}

TEST_CASE("the setting as left keeps the tempo, the setting start goes to the start") {
    const Tempo full = Tempo::bpm(84);
    CHECK(dayOpens(DayOpening::asLeft, Tempo::bpm(130), &full, Tempo::bpm(60), fourTwo()) == Tempo::bpm(130));
    CHECK(dayOpens(DayOpening::start, Tempo::bpm(70), &full, Tempo::bpm(60), fourTwo()) == Tempo::bpm(60));
}

TEST_CASE("gentle: within two climbs of the target a miss drops by one climb, before that by the drop") {
    Rule rule = fourTwo();
    rule.gentle = true;
    CHECK(afterMiss(at(95, 1), rule).after == at(93, 0));
    CHECK(afterMiss(at(92, 1), rule).after == at(90, 0));
    CHECK(afterMiss(at(91, 1), rule).after == at(87, 0));
    rule.floor = Tempo::bpm(94);
    CHECK(afterMiss(at(95, 1), rule).after == at(94, 0));
}

TEST_CASE("gentle: at the target one miss only ends the streak, and two running drop one climb") {
    Rule rule = fourTwo();
    rule.gentle = true;
    const Outcome first = afterMiss(at(96, 3), rule);
    CHECK(first.after == Standing{Tempo::bpm(96), 0, true});
    CHECK_FALSE(first.dropped);
    const Outcome second = afterMiss(first.after, rule);
    CHECK(second.after == at(94, 0));
    CHECK(second.dropped);
    CHECK(afterClean(first.after, rule).after == at(96, 1));
    CHECK(afterMiss(afterClean(first.after, rule).after, rule).after == first.after);
    CHECK(afterRun(first.after, Tempo::bpm(96), Mark::voided, rule).after == first.after);
    CHECK(afterMiss(at(100, 0), rule).after == Standing{Tempo::bpm(100), 0, true});
    rule.floor = rule.target;
    CHECK(afterMiss(at(96, 3), rule).after == at(96, 0));
}

TEST_CASE("gentle: an edit that is no longer gentle, or raises the target, forgets the spared miss") {
    Rule rule = fourTwo();
    rule.gentle = true;
    const Standing spared{Tempo::bpm(96), 0, true};
    CHECK(edited(spared, rule) == spared);
    Rule higher = rule;
    higher.target = Tempo::bpm(98);
    CHECK(edited(spared, higher) == at(96, 0));
    rule.gentle = false;
    CHECK(edited(spared, rule) == at(96, 0));
}

TEST_CASE("gentle in notches: the steps are notches, too") {
    Rule rule = inNotches();
    rule.gentle = true;
    CHECK(afterMiss({Tempo::bpm(88), 2}, rule).after == at(84, 0));
    CHECK(afterMiss({Tempo::bpm(84), 2}, rule).after == at(76, 0));
}
