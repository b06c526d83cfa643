// SPDX-License-Identifier: GPL-3.0-or-later
// Marks changed afterwards, and what was taken back put back.
#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

/// The same history, in which the run was marked so from the beginning.
PassageRecord markedFromTheBeginning(Scribe scribe, Id run, Mark mark) {
    for (Fact& fact : scribe.facts)
        if (fact.id == run) std::get<RunFact>(fact.body).mark = mark;
    return scribe.record();
}

/// All but the entry that says that it was corrected.
bool countsTheSame(PassageRecord a, const PassageRecord& b) {
    for (Entry& entry : a.entries.list()) entry.corrected = false;
    return a == b;
}

} // namespace

TEST_CASE("a corrected mark counts as if the run had been marked so from the beginning") {
    for (const Mark from : {Mark::clean, Mark::missed, Mark::voided})
        for (const Mark to : {Mark::clean, Mark::missed, Mark::voided}) {
            Scribe scribe;
            scribe.clean(4);
            const Id run = scribe.here(from);
            scribe.clean(3);
            const PassageRecord wanted = markedFromTheBeginning(scribe, run, to);
            scribe.correct(run, to);
            CHECK(countsTheSame(scribe.record(), wanted));
            CHECK(scribe.record().entries[4].corrected == (from != to));
        }
}

TEST_CASE("runs after a corrected one keep the tempo at which they were played") {
    Scribe scribe;
    scribe.clean(4);
    const Id run = scribe.clean();
    scribe.clean(2);
    CHECK(scribe.standing() == at(82, 2));
    scribe.correct(run, Mark::missed);
    // The fifth run drops to 76. The next was played at 82, so it sets the tempo to 82 and counts.
    CHECK(scribe.record().entries[4].after == at(76, 0));
    CHECK(scribe.record().entries[5].tempo == Tempo::bpm(82));
    CHECK(scribe.standing() == at(82, 2));
    CHECK_FALSE(scribe.record().best);
}

TEST_CASE("a miss corrected to clean has no place, and a run that was cut short has no reason") {
    Scribe scribe;
    const Id missed = scribe.miss();
    std::get<RunFact>(scribe.facts.back().body).spots = {{3, 1, 0}};
    const Id stopped = scribe.here(Mark::voided);
    std::get<RunFact>(scribe.facts.back().body).reason = Reason::stopped;
    scribe.correct(missed, Mark::clean);
    scribe.correct(stopped, Mark::missed);
    CHECK(scribe.record().entries[0].spots.empty());
    CHECK(scribe.record().entries[1].reason == Reason::none);
    scribe.correct(missed, Mark::missed);
    CHECK(scribe.record().entries[0].spots.size() == 1);
    CHECK_FALSE(scribe.record().entries[0].corrected);
}

TEST_CASE("the latest correction of a run decides its mark, and taking it back leaves the one before") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.correct(run, Mark::missed);
    const Id last = scribe.correct(run, Mark::voided);
    CHECK(scribe.record().entries[0].mark == Mark::voided);
    CHECK(scribe.back() == last);
    CHECK(scribe.standing() == at(76, 0));
    scribe.back();
    CHECK(scribe.standing() == at(80, 1));
}

TEST_CASE("a correction brings back what was taken back, with the mark it had or another") {
    Scribe scribe;
    scribe.clean();
    const Id run = scribe.miss();
    const PassageRecord before = scribe.record();
    scribe.back(run);
    CHECK(scribe.record().entries.size() == 1);
    scribe.correct(run);
    CHECK(scribe.record() == before);
    scribe.back(run);
    scribe.correct(run, Mark::clean);
    CHECK(scribe.standing() == at(80, 2));
}

TEST_CASE("a tempo, a late miss and a doubt are put back in their own place") {
    Scribe scribe;
    const Id run = scribe.clean();
    const Id other = scribe.clean();
    const std::vector<Id> taken{scribe.tempo(70), scribe.late(run), scribe.doubt({other})};
    for (const Id fact : taken) {
        const PassageRecord before = scribe.record();
        scribe.back(fact);
        CHECK_FALSE(scribe.record() == before);
        scribe.correct(fact);
        CHECK(scribe.record() == before);
    }
}

TEST_CASE("of backs and corrections of one fact the last in the order decides, in any order of arrival") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.back(run);
    scribe.correct(run);
    CHECK(scribe.standing() == at(80, 1));
    scribe.back(run);
    CHECK(scribe.standing() == at(80, 0));
    std::swap(scribe.facts[2], scribe.facts[4]);
    CHECK(scribe.standing() == at(80, 0));
    std::swap(scribe.facts[3], scribe.facts[4]);
    CHECK(scribe.standing() == at(80, 0));
}

TEST_CASE("a correction that is taken back leaves the run taken back") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.back(run);
    const Id putBack = scribe.correct(run);
    CHECK(scribe.back() == putBack);
    CHECK(scribe.record().entries.empty());
    CHECK(scribe.back().isNone());
}

TEST_CASE("a correction of a back or of another correction has no effect") {
    Scribe scribe;
    const Id run = scribe.miss();
    const Id correction = scribe.correct(run, Mark::clean);
    const Id back = scribe.back(correction);
    scribe.correct(correction);
    scribe.correct(back);
    CHECK(scribe.standing() == at(76, 0));
}

TEST_CASE("late misses and doubts count if they stand after the correction") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.late(run);
    scribe.doubt({run});
    scribe.correct(run, Mark::clean);
    CHECK(scribe.standing() == at(80, 1));
    scribe.late(run);
    CHECK(scribe.standing() == at(76, 0));
    CHECK(scribe.record().entries[0].late);
    scribe.doubt({run});
    CHECK(scribe.record().entries[0].mark == Mark::voided);
}

TEST_CASE("a correction in another passage has no effect") {
    Scribe scribe;
    const Id run = scribe.miss();
    scribe.add(CorrectionFact{Id{8, 8}, run, Mark::clean});
    CHECK(scribe.standing() == at(76, 0));
}

TEST_CASE("a run-through that was taken back can be put back") {
    Scribe scribe;
    const Id piece{5, 5};
    const Id through = scribe.add(RunThroughFact{piece, {}, 300'000, true, {}});
    const Id back = scribe.add(BackFact{piece, through});
    CHECK(scribe.notebook().runThroughs(piece).empty());
    scribe.add(CorrectionFact{piece, through, {}});
    CHECK(scribe.notebook().runThroughs(piece).size() == 1);
    scribe.add(BackFact{piece, through});
    CHECK(scribe.notebook().runThroughs(piece).empty());
    scribe.add(CorrectionFact{piece, back, {}});
    CHECK(scribe.notebook().runThroughs(piece).empty());
}
