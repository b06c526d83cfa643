// SPDX-License-Identifier: GPL-3.0-or-later
// Laws of a day: its figures, and the tempo at which it opens.
#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

TEST_CASE(
    "a day's best is the highest tempo of its clean runs, whatever came after and whatever was missed") {
    Scribe scribe;
    scribe.run(70, Mark::clean);
    scribe.run(90, Mark::clean);
    scribe.run(72, Mark::clean);
    scribe.run(100, Mark::missed);
    scribe.run(110, Mark::voided);
    scribe.tryOnce(120, Mark::clean);
    const DayFigures figures = scribe.notebook().day(day("2026-03-01"), scribe.passage);
    CHECK(figures.best == Tempo::bpm(90));
    CHECK(figures.clean == 3);
    CHECK(figures.runs == 4);
    CHECK(figures.voided == 1);
}

TEST_CASE("without a passage, the figures of a day are those of all passages together") {
    Scribe one;
    one.run(90, Mark::clean);
    Scribe other;
    other.passage = Id{8, 8};
    other.facts.clear();
    other.add(PassageFact{other.passage, Title{"Coda", {}}, Music{}, usualTempi()});
    other.facts.back().id = Id{2, 1};
    other.run(84, Mark::missed);
    other.facts.back().id = Id{2, 2};
    Notebook notebook = one.notebook();
    for (const Fact& fact : other.facts) notebook.add(fact);
    CHECK(notebook.day(day("2026-03-01"), {}).runs == 2);
    CHECK(notebook.day(day("2026-03-01"), {}).best == Tempo::bpm(90));
    CHECK(notebook.day(day("2026-03-01"), other.passage).runs == 1);
    CHECK_FALSE(notebook.day(day("2026-03-01"), other.passage).best);
}

TEST_CASE("a manual tempo change that was taken back does not prevent the day's opening") {
    Scribe scribe;
    scribe.clean();
    scribe.tempo(90);
    scribe.turnTo("2026-03-02");
    scribe.back(scribe.tempo(96));
    CHECK(scribe.notebook().opening(scribe.passage, day("2026-03-02")) == Tempo::bpm(80));
}

TEST_CASE("a manual tempo change prevents the day's opening, and so does a void run") {
    Scribe set;
    set.clean();
    set.turnTo("2026-03-02");
    set.tempo(90);
    CHECK_FALSE(set.notebook().opening(set.passage, day("2026-03-02")));
    Scribe stopped;
    stopped.clean();
    stopped.tempo(90);
    stopped.turnTo("2026-03-02");
    stopped.run(90, Mark::voided);
    CHECK_FALSE(stopped.notebook().opening(stopped.passage, day("2026-03-02")));
}

TEST_CASE("an edit or a late miss does not open a day") {
    Scribe scribe;
    const Id run = scribe.clean();
    scribe.tempo(90);
    scribe.turnTo("2026-03-02");
    scribe.late(run);
    scribe.edit(usualTempi());
    CHECK(scribe.notebook().opening(scribe.passage, day("2026-03-02")) == Tempo::bpm(80));
}

TEST_CASE("days with a secure are counted once each, whichever they are") {
    const auto daysOf = [](std::vector<const char*> dates) {
        PassageRecord record;
        for (const char* const date : dates) record.secures.push_back({day(date), Tempo::bpm(96)});
        return record.secureDays();
    };
    CHECK(daysOf({}) == 0);
    CHECK(daysOf({"2026-03-01"}) == 1);
    CHECK(daysOf({"2026-03-01", "2026-03-02", "2026-03-02"}) == 2);
    CHECK(daysOf({"2026-03-01", "2026-03-02", "2026-03-03", "2026-03-02"}) == 3);
}

TEST_CASE("an edit that keeps the target keeps the secures") {
    Scribe scribe;
    scribe.tempo(96);
    scribe.clean(5);
    Tempi tempi = usualTempi();
    tempi.rule.climb = 4;
    scribe.edit(tempi);
    CHECK(scribe.record().secures.size() == 1);
    tempi.rule.target = Tempo::bpm(97);
    scribe.edit(tempi);
    CHECK(scribe.record().secures.empty());
}
