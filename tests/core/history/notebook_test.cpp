// SPDX-License-Identifier: GPL-3.0-or-later
// The notebook beyond the rule: pieces, removal, settings, days, openings, arrival.
#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

const Id march{20, 1};
const Id waltz{20, 2};

Fact named(std::uint64_t number, std::int64_t order, FactBody body) {
    return {Id{2, number}, "pit", number, order, Timestamp{order, 0}, std::move(body)};
}
PieceFact nameOf(Id piece, const char* name) { return {piece, name, {}, {}}; }

} // namespace

TEST_CASE("a fact with a known id changes nothing") {
    Scribe scribe;
    scribe.clean();
    Notebook notebook = scribe.notebook();
    CHECK_FALSE(notebook.add(scribe.facts.back()));
    CHECK(notebook.factCount() == 2);
    CHECK(notebook.passage(scribe.passage)->standing == at(80, 1));
}

TEST_CASE("the notebook sorts by order, then device, then seq, then id") {
    const Fact base = named(5, 100, SettingsFact{});
    Fact other = base;
    other.order = 101;
    CHECK(standsBefore(base, other));
    other.device = "attic";
    CHECK(standsBefore(base, other));
    other.order = 100;
    CHECK(standsBefore(other, base));
    other = base;
    other.seq = 4;
    CHECK(standsBefore(other, base));
    other.seq = 5;
    other.id = Id{3, 0};
    CHECK(standsBefore(base, other));
    CHECK_FALSE(standsBefore(base, base));
}

TEST_CASE("facts about a passage name it; others name none") {
    const Id id{7, 7};
    RunFact run;
    run.passage = id;
    for (const FactBody& body : std::vector<FactBody>{
             run, LateMissFact{id, {}}, DoubtFact{id, {}}, BackFact{id, {}}, CorrectionFact{id, {}, {}},
             TempoFact{id, Tempo::bpm(60), Reason::hand}, PassageFact{id, {}, {}, {}}})
        CHECK(passageOf(body) == id);
    for (const FactBody& body :
         std::vector<FactBody>{PieceFact{id, {}, {}, {}}, RemovalFact{id, true}, SettingsFact{}, ClockFact{}})
        CHECK(passageOf(body).isNone());
}

TEST_CASE("an unknown passage and one without tempi have no record") {
    Notebook notebook;
    CHECK(notebook.passage(Id{7, 7}) == nullptr);
    Scribe scribe;
    scribe.clean();
    scribe.facts.erase(scribe.facts.begin());
    CHECK(scribe.notebook().passage(scribe.passage) == nullptr);
    CHECK(scribe.notebook().passages().empty());
    CHECK(scribe.notebook().day(day("2026-03-01"), {}).runs == 0);
}

TEST_CASE("a passage whose tempi arrive last is folded completely") {
    Scribe scribe;
    scribe.clean(5);
    Notebook notebook;
    for (std::size_t index = 1; index < scribe.facts.size(); ++index) notebook.add(scribe.facts[index]);
    CHECK(notebook.passage(scribe.passage) == nullptr);
    notebook.add(scribe.facts.front());
    CHECK(notebook.passage(scribe.passage)->standing == at(82, 0));
}

TEST_CASE("the newest of each group of a piece wins, in any order of arrival") {
    Notebook notebook;
    notebook.add(named(1, 30, nameOf(march, "Harbour March")));
    notebook.add(named(2, 20, PieceFact{march, "March", "Clarinet in B flat", day("2026-05-09")}));
    notebook.add(named(3, 10, nameOf(waltz, "Anniversary Waltz")));
    const std::vector<Piece> pieces = notebook.pieces();
    REQUIRE(pieces.size() == 2);
    CHECK(pieces[0].name == "Anniversary Waltz");
    CHECK(pieces[1] == Piece{march, "Harbour March", "Clarinet in B flat", day("2026-05-09")});
    notebook.add(named(4, 40, PieceFact{march, {}, {}, std::optional<Date>{}}));
    CHECK_FALSE(notebook.pieces()[1].due);
}

TEST_CASE("a piece grows fact by fact: composer, transposition, bars, music and notes") {
    Notebook notebook;
    const PieceMusic slow{Meter{}, Tempo::bpm(72)};
    const PieceMusic known{Meter{}, std::nullopt};
    notebook.add(named(1, 40, PieceFact{march, {}, {}, {}, "Ada Finch", {}, {}, known, {}}));
    notebook.add(named(2, 20, PieceFact{march, "March", {}, {}, "A. Finch", -2, 148, slow, "Cue: oboe"}));
    notebook.add(named(3, 30, PieceFact{march, {}, {}, {}, {}, 0, {}, {}, ""}));
    CHECK(notebook.piece(march) == notebook.pieces().front());
    CHECK_FALSE(notebook.piece(Id{9, 9}));
    CHECK(notebook.pieces().front() == Piece{march, "March", "", {}, "Ada Finch", 0, 148, known, ""});
}

TEST_CASE("a removal lasts until a restoring fact, by order, not by arrival") {
    Scribe scribe;
    Notebook notebook = scribe.notebook();
    notebook.add(named(1, 500, RemovalFact{scribe.passage, true}));
    CHECK(notebook.passages().empty());
    CHECK(notebook.passages(true) == std::vector<Id>{scribe.passage});
    CHECK(notebook.passage(scribe.passage)->removed);
    notebook.add(named(2, 400, RemovalFact{scribe.passage, false}));
    CHECK(notebook.passages().empty());
    notebook.add(named(3, 600, RemovalFact{scribe.passage, false}));
    CHECK(notebook.passages() == std::vector<Id>{scribe.passage});
    CHECK_FALSE(notebook.passage(scribe.passage)->removed);
}

TEST_CASE("a removed piece is listed only on request") {
    Notebook notebook;
    notebook.add(named(1, 10, nameOf(march, "Harbour March")));
    notebook.add(named(2, 20, RemovalFact{march, true}));
    CHECK(notebook.pieces().empty());
    CHECK(notebook.pieces(true).size() == 1);
}

TEST_CASE("the newest settings win") {
    Notebook notebook;
    CHECK(notebook.settings() == PracticeSettings{});
    PracticeSettings settings;
    settings.playOn = true;
    notebook.add(named(1, 20, SettingsFact{settings}));
    settings.playOn = false;
    settings.secureDays = 4;
    notebook.add(named(2, 10, SettingsFact{settings}));
    CHECK(notebook.settings().playOn);
    CHECK(notebook.settings().secureDays == 3);
}

TEST_CASE("passages are in order of creation and are found by id or exact title") {
    Scribe later;
    later.facts.front().order = 900;
    Scribe sooner;
    sooner.passage = Id{9, 9};
    sooner.facts.clear();
    sooner.define(usualTempi());
    Notebook notebook = fold(later.facts);
    notebook.add(sooner.facts.front());
    CHECK(notebook.passages() == std::vector<Id>{Id{9, 9}, Id{7, 7}});
    CHECK(notebook.find("Run of sixteenths") == std::vector<Id>{Id{9, 9}, Id{7, 7}});
    CHECK(notebook.find(Id{7, 7}.text()) == std::vector<Id>{Id{7, 7}});
    CHECK(notebook.find("run of sixteenths").empty());
    CHECK(notebook.find(Id{6, 6}.text()).empty());
    notebook.add(named(1, 1000, RemovalFact{Id{9, 9}, true}));
    CHECK(notebook.find("Run of sixteenths") == std::vector<Id>{Id{7, 7}});
    CHECK(notebook.find(Id{9, 9}.text()) == std::vector<Id>{Id{9, 9}});
}

TEST_CASE("a day's figures count clean and missed runs without tries, and all practice time") {
    Scribe scribe;
    scribe.clean(2);
    scribe.miss();
    scribe.here(Mark::voided);
    scribe.tryOnce(96, Mark::clean);
    scribe.turnTo("2026-03-02");
    scribe.clean();
    const Notebook notebook = scribe.notebook();
    for (const Id passage : {scribe.passage, Id{}}) {
        const DayFigures figures = notebook.day(day("2026-03-01"), passage);
        CHECK(figures.runs == 3);
        CHECK(figures.clean == 2);
        CHECK(figures.voided == 1);
        CHECK(figures.best == Tempo::bpm(80));
        CHECK(figures.millis == 50'000);
    }
    CHECK(notebook.day(day("2026-03-02"), {}).runs == 1);
    CHECK(notebook.day(day("2026-03-03"), {}).millis == 0);
    CHECK_FALSE(notebook.day(day("2026-03-03"), {}).best);
    CHECK(notebook.day(day("2026-03-01"), Id{8, 8}).runs == 0);
}

TEST_CASE("a day opens two rungs below the last full streak, once") {
    Scribe scribe;
    scribe.tempo(88);
    scribe.clean(5);
    CHECK_FALSE(scribe.notebook().opening(scribe.passage, day("2026-03-01")));
    CHECK(scribe.notebook().opening(scribe.passage, day("2026-03-02")) == Tempo::bpm(84));
    scribe.turnTo("2026-03-02");
    const Id opening = scribe.tempo(84, Reason::newDay);
    CHECK_FALSE(scribe.notebook().opening(scribe.passage, day("2026-03-02")));
    scribe.back(opening);
    CHECK(scribe.standing() == at(90, 0));
    CHECK_FALSE(scribe.notebook().opening(scribe.passage, day("2026-03-02")));
    CHECK(scribe.notebook().opening(scribe.passage, day("2026-03-03")) == Tempo::bpm(84));
}

TEST_CASE("a passage is not opened if it was never played or has that tempo anyway") {
    Scribe scribe;
    scribe.tempo(90);
    CHECK_FALSE(scribe.notebook().opening(scribe.passage, day("2026-03-02")));
    CHECK_FALSE(scribe.notebook().opening(Id{8, 8}, day("2026-03-02")));
    scribe.clean();
    CHECK(scribe.notebook().opening(scribe.passage, day("2026-03-02")) == Tempo::bpm(80));
    scribe.tempo(80);
    CHECK_FALSE(scribe.notebook().opening(scribe.passage, day("2026-03-02")));
}

TEST_CASE("a run that was taken back does not prevent the day's opening") {
    Scribe scribe;
    scribe.clean();
    scribe.tempo(90);
    scribe.turnTo("2026-03-02");
    scribe.back(scribe.clean());
    CHECK(scribe.notebook().opening(scribe.passage, day("2026-03-02")) == Tempo::bpm(80));
}

TEST_CASE("the setting decides where a day opens") {
    Scribe scribe;
    scribe.tempo(88);
    scribe.clean(5);
    PracticeSettings settings;
    settings.dayOpening = DayOpening::asLeft;
    scribe.add(SettingsFact{settings});
    CHECK_FALSE(scribe.notebook().opening(scribe.passage, day("2026-03-02")));
    settings.dayOpening = DayOpening::start;
    scribe.add(SettingsFact{settings});
    CHECK(scribe.notebook().opening(scribe.passage, day("2026-03-02")) == Tempo::bpm(80));
}
